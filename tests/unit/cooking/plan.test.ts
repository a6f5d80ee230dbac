import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { recompute, ruleIds, type Figure } from '../../../shared/figure';
import { plan, type Plan } from '../../../shared/plan';
import { parameter, safetyRule } from '../../../shared/reference';
import { sayMessage } from '../../../shared/words';
import { mealEvent, type Meal } from './meal-event';

const of = (p: Plan, dish: string) => {
  const found = p.cooking.dishes.find((d) => d.dish === dish);
  if (found === undefined) throw new Error(`no ${dish}`);
  return found;
};
const text = (event: Event, p: Plan): string => p.cooking.notes.flatMap((n) => [n.message, ...n.ways]).map((m) => sayMessage(formatsFor(event.preferences, event.day), m)).join('\n').replaceAll(/[\u00a0\u202f]/g, ' ');

const riceAt = (hotHoldC: number, profile: 'household' | 'uk') => of(plan(mealEvent({ recipes: ['boiled-rice'], hotHoldC, profile })), 'boiled-rice');
const yoghurt = (m: Meal) => of(plan(mealEvent({ recipes: ['yoghurt-cucumber-bowl'], ...m })), 'yoghurt-cucumber-bowl');

describe('the limits are the published ones', () => {
  // safety.md, section "Time out": USDA 2 h and 1 h above 32 °C; UK regulations Schedule 4; FDA Food Code 3-501.16; BfR 037/2020.
  it.each([['serve.out', 'TC-01', 60], ['serve.outHotRoom', 'TC-02', 60], ['serve.hot', 'HH-02', 1], ['serve.hotUk', 'HH-03', 1], ['serve.cold', 'CH-01', 1], ['serve.coldUk', 'CH-03', 1]] as const)('%s is that of rule %s', (id, rule, times) => {
    expect(parameter(id).value).toBe((safetyRule(rule).limit ?? 0) * times);
  });
  it('a household may be stricter, never laxer', () => {
    for (const id of ['serve.out', 'serve.outHotRoom', 'serve.outUkCold']) expect(parameter(id).max).toBe(parameter(id).value);
    for (const id of ['serve.hot', 'serve.hotUk']) expect(parameter(id).min).toBe(parameter(id).value);
    for (const id of ['serve.cold', 'serve.coldUk']) expect(parameter(id).max).toBe(parameter(id).value);
  });
});

describe('a pot', () => {
  it('eleven kilograms of rice do not go into ten litres: three goes, and what a bigger pot would have to hold', () => {
    const event = mealEvent({ recipes: ['boiled-rice'], adults: 75, served: { from: 660, to: 690 }, pots: [10] });
    const p = plan(event);
    const rice = of(p, 'boiled-rice');
    const kg = p.menu.dishes[0]!.totalFigure.value / 1000;
    // 158 g a cup of 236.6 ml (AFRS-E005).
    expect(rice.pot?.litres.value).toBeCloseTo((kg / 0.67) * (Math.max(...rice.cookings.map((c) => c.portions)) / p.menu.dishes[0]!.portions.value), 6);
    expect(rice.pot?.usable?.value).toBe(7.5);
    expect(rice.pot?.goes?.value).toBe(Math.ceil(rice.pot!.litres.value / 7.5));
    expect(p.day.tasks.some((t) => t.id.startsWith('step/boil/boiled-rice'))).toBe(true);
    expect(rice.pot!.goes!.value).toBeGreaterThan(1);
    expect(text(event, p)).toContain('Borrow a pot of');
  });
  it('goes are jobs of the day, each with its own minutes, and the last waits for none of another pot', () => {
    const event = mealEvent({ recipes: ['kidney-bean-pot'], adults: 90, served: { from: 720, to: 735 }, pots: [10, 10], burners: 4, cooks: 4 });
    const p = plan(event);
    const made = of(p, 'kidney-bean-pot');
    const goes = made.cookings.reduce((n, c) => n + c.pots.length, 0);
    expect(goes).toBeGreaterThan(1);
    const boils = p.day.tasks.filter((t) => /^step\/boil-hard\/kidney-bean-pot(\/cooking\d+)?(\/go\d+)?$/.test(t.id));
    expect(boils).toHaveLength(goes);
    expect(new Set(boils.flatMap((t) => t.needs.map((n) => n.thing)).filter((n) => n.startsWith('pot:'))).size).toBe(2);
    // Soaked and cut once for all.
    expect(p.day.tasks.filter((t) => t.id.startsWith('step/soak/') && t.attention > 0)).toHaveLength(1);
    const simmer = p.day.tasks.find((t) => t.id === 'step/simmer/kidney-bean-pot/go2' || t.id === 'step/simmer/kidney-bean-pot/cooking2');
    expect(simmer?.after.some((id) => id.startsWith('step/boil-hard/'))).toBe(true);
  });
  it('where the kitchen has none, says how large one has to be', () => {
    const event = mealEvent({ recipes: ['boiled-rice'], pots: [], served: { from: 720, to: 750 } });
    expect(text(event, plan(event))).toMatch(/Boiled rice needs a pot for [\d.]+ L, and the kitchen names none/);
  });
});

describe('keeping', () => {
  it('rice that keeps 90 minutes and is served all day is cooked again and again, each for its own guests', () => {
    const event = mealEvent();
    const p = plan(event);
    const rice = of(p, 'boiled-rice');
    expect(rice.keeps?.value).toBe(90);
    expect(rice.cookings.length).toBeGreaterThanOrEqual(5);
    for (const c of rice.cookings) expect(c.to - c.from).toBeLessThanOrEqual(70);
    expect(rice.cookings.reduce((n, c) => n + c.portions, 0)).toBe(p.menu.dishes[0]!.portions.value);
    expect(rice.cookings.reduce((n, c) => n + c.share, 0)).toBeCloseTo(1, 9);
    expect(p.day.tasks.filter((t) => t.id.startsWith('serve/fresh/boiled-rice/'))).toHaveLength(rice.cookings.length - 1);
    expect(text(event, p)).toMatch(/Boiled rice is served for 7 h \d+ min and keeps 1 h 30 min\. It is cooked \d times/);
  });
  it('kept at 60 °C or hotter it is cooked less often, under the rules of the United Kingdom from 63 °C', () => {
    expect(riceAt(59, 'household').isHeldHot).toBe(false);
    expect(riceAt(60, 'household').cookings.length).toBeLessThan(riceAt(59, 'household').cookings.length);
    expect(riceAt(62, 'uk').isHeldHot).toBe(false);
    expect(riceAt(63, 'uk').isHeldHot).toBe(true);
  });
  it('a salad of yoghurt stands on the table two hours at most, one in a hot room, four once in the United Kingdom', () => {
    expect(yoghurt({}).bowlStands?.value).toBe(120);
    expect(yoghurt({ roomC: 33 }).bowlStands?.value).toBe(60);
    expect(yoghurt({ profile: 'uk' }).bowlStands?.value).toBe(240);
    for (const m of [{}, { roomC: 33 }, { profile: 'uk' as const }]) {
      const made = yoghurt(m);
      expect(made.bowls.length).toBeGreaterThan(1);
      expect(made.bowls.reduce((n, b) => n + b.portions, 0)).toBe(made.cookings.reduce((n, c) => n + c.portions, 0));
    }
    expect(yoghurt({ holding: { place: 'cold', temperatureC: 5 } }).bowls).toEqual([]);
    expect(yoghurt({ holding: { place: 'cold', temperatureC: 6 } }).bowls.length).toBeGreaterThan(1);
  });
  it('a bowl is out of the fridge no longer than it may be, from when it is put out', () => {
    const p = plan(mealEvent({ recipes: ['yoghurt-cucumber-bowl'], cooks: 3 }));
    const made = of(p, 'yoghurt-cucumber-bowl');
    for (const bowl of made.bowls.slice(1)) {
      const out = p.day.tasks.find((t) => t.id === `serve/fresh/yoghurt-cucumber-bowl/${bowl.number}`);
      expect(out, `bowl ${bowl.number}`).toBeDefined();
      expect(bowl.to - (out?.start ?? 0)).toBeLessThanOrEqual(120);
      expect(out?.end).toBeLessThanOrEqual(bowl.from);
    }
  });
  it('beans cooked for the table are not called cooked and kept cold for the onions cut ahead', () => {
    const p = plan(mealEvent({ served: { from: 720, to: 750 } }));
    expect(p.safety.findings.filter((f) => ['CO-01', 'CO-05', 'CO-06'].includes(f.rule) && f.about.includes('kidney-bean-pot'))).toEqual([]);
  });
  it('what the day cannot cook fresh is told with its minutes and its ways out', () => {
    const event = mealEvent();
    const told = plan(event).cooking.notes.filter((n) => n.message.id === 'cooking.say.stood');
    expect(told.length).toBeGreaterThan(0);
    for (const n of told) {
      expect(n.level).toBe('watch');
      expect(n.measured.value).toBeGreaterThan(n.limit.value);
      expect(n.ways.length).toBeGreaterThan(0);
    }
  });
});

const meals: fc.Arbitrary<Meal> = fc.record({
  recipes: fc.subarray(['boiled-rice', 'kidney-bean-pot', 'yoghurt-cucumber-bowl', 'chickpeas-tomato', 'lemon-rice', 'cucumber-tomato-salad'], { minLength: 1, maxLength: 3 }),
  pots: fc.array(fc.constantFrom(3, 5, 8, 10, 15, 30), { minLength: 1, maxLength: 4 }), adults: fc.integer({ min: 1, max: 40 }), cooks: fc.integer({ min: 1, max: 4 }), burners: fc.integer({ min: 1, max: 4 }),
  roomC: fc.constantFrom(21, 33), profile: fc.constantFrom('household', 'us', 'uk', 'eu'),
});
const served = fc.option(fc.record({ from: fc.integer({ min: 660, max: 900 }), length: fc.integer({ min: 15, max: 240 }) }).map(({ from, length }) => ({ from, to: from + length })), { nil: undefined });

describe('every plan', () => {
  it('serves each minute of each dish within its keeping time, or says which does not; no pot is fuller than it may be', () => {
    let fine = 0;
    fc.assert(fc.property(meals, served, (meal, when) => {
      const event = mealEvent({ ...meal, ...(when === undefined ? {} : { served: when }) });
      const p = plan(event);
      const said = new Set(p.cooking.notes.filter((n) => n.message.id === 'cooking.say.stood').map((n) => n.dish));
      for (const made of p.cooking.dishes) {
        const dish = p.menu.dishes.find((d) => d.id === made.dish)!;
        // Every portion belongs to one cooking.
        for (const [i, portions] of dish.demand.values.entries()) {
          const at = dish.demand.fromMinute + i;
          expect(portions > 0 ? made.cookings.filter((c) => c.from <= at && at <= c.to).length : 1).toBe(1);
        }
        const last = dish.recipe.steps.filter((s) => !dish.recipe.steps.some((x) => x.after.includes(s.id))).map((s) => s.id);
        let within = true;
        for (const c of made.cookings) {
          const steps = p.day.tasks.filter((t) => t.dish === made.dish && t.cooking === c.number && last.some((id) => t.id.startsWith(`step/${id}/`)));
          expect(steps.length).toBeGreaterThan(0);
          // Each go ends with its own last task.
          const goes = new Map<string, number[]>();
          for (const t of steps) { const go = /\/go(\d+)/.exec(t.id)?.[1] ?? '1'; goes.set(go, [...(goes.get(go) ?? []), t.end]); }
          expect(goes.size === 1 || goes.size === c.pots.length).toBe(true);
          for (const ends of goes.values()) if (made.keeps !== null && c.to - Math.max(...ends) > made.keeps.value) within = false;
          // What stands in a pot, weighed anew: cooked weight over its density at least.
          if (made.pot === null || made.pot.goes === null) continue;
          const kg = (dish.total.unit === 'g' ? dish.totalFigure.value / 1000 : dish.totalFigure.value) * c.share;
          for (const pot of c.pots) {
            const holds = pot === null ? Math.min(...event.kitchen.pots.map((x) => x.litres)) : event.kitchen.pots.find((x) => x.id === pot)!.litres;
            expect(kg / c.pots.length).toBeLessThanOrEqual(holds * 0.75 + 1e-6);
            expect((kg * (dish.role === 'grain' ? 1 / 0.67 : 1)) / c.pots.length).toBeLessThanOrEqual(holds * 0.75 + 1e-6);
          }
        }
        expect(said.has(made.dish)).toBe(!within);
        if (within) fine += 1;
      }
    }), { numRuns: 60 });
    expect(fine).toBeGreaterThan(20);
  });
  it('has figures whose workings recompute', () => {
    const seen = new Set<string>();
    const check = (f: Figure, where: string): void => {
      const working = f.working();
      expect(ruleIds).toContain(working.rule);
      seen.add(working.rule);
      expect(working.terms.length, where).toBeGreaterThan(0);
      expect(Math.abs(recompute(working) - f.value), `${where} ${working.rule}`).toBeLessThanOrEqual(1e-9 * Math.max(1, f.value));
      for (const t of working.terms) if (t.figure !== undefined) check(t.figure, `${where}.${t.key}`);
    };
    for (const m of [{}, { pots: [] }, { pots: [3] }, { hotHoldC: 65 }, { recipes: ['boiled-rice'], adults: 60, served: { from: 660, to: 700 } }] satisfies Meal[]) {
      const { cooking } = plan(mealEvent(m));
      for (const d of cooking.dishes) for (const f of [d.keeps, d.count, d.bowlStands, d.pot?.litres, d.pot?.usable, d.pot?.goes]) if (f !== null && f !== undefined) check(f, d.dish);
      for (const n of cooking.notes) { check(n.measured, n.message.id); check(n.limit, n.message.id); }
    }
    expect([...ruleIds].filter((id) => id.startsWith('cooking.') && !seen.has(id))).toEqual(['cooking.potWanted']);
  });
});
