import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gasNeeds, planBuying, thingNeeds, type Need, type ThingNeed } from '../../../shared/buying';
import type { Event } from '../../../shared/event';
import { entered, figure, just, ruleIds, type Figure } from '../../../shared/figure';
import { planGuests } from '../../../shared/guests';
import { parameter, things } from '../../../shared/reference';
import { isWordId } from '../../../shared/words';
import { opened, unused } from '../plan/workings';
import { adults, allFigures, drinkOf, faultsOf, menuEvent, menuOf, piecesOf, recipeOf } from '../menu/make-menu';
import { line, needOf } from './make-buying';

const frying = { pieceBatterG: 30, fryMinutes: 3 };
const party = (n: number, more: Readonly<Record<string, unknown>> = {}, stay = 90): Event => menuEvent([
  recipeOf('rice', 'grain', { steps: [{ id: 's', name: 'Chill', keeps: { place: 'cold', minutes: 600 } }] }), recipeOf('soup', 'soup'), piecesOf('fritter', 'friedSnack', { frying }),
  drinkOf('tea', true, true), drinkOf('squash', false, false),
], [adults(n, { stay: { shortest: stay, usual: stay, longest: stay } })], more);

/** As the day hands it over: kilograms to have in the cylinders. */
const wanted = (kg: number): Figure => figure(kg, 'kg', () => ({ rule: 'gas.wanted', terms: [entered('kg', { text: 'kg' }, kg, 'kg', 'x')], sum: just('kg') }));

function needsOf(event: Event, food: readonly Need[] = []): ThingNeed[] {
  const guests = planGuests(event);
  return thingNeeds(event, { guests, menu: menuOf(event), food });
}
const countOf = (event: Event, thing: string, origin?: string): number =>
  needsOf(event).filter((n) => n.ingredient === thing && (origin === undefined || n.origin === origin)).reduce((sum, n) => sum + n.figure.value, 0);

describe('things counted from people and refills', () => {
  it('a cup for everybody\u2019s first drink, for half of the later ones, and the spare', () => {
    const event = party(40);
    const menu = menuOf(event);
    const people = planGuests(event).planned.value;
    const tea = menu.dishes.find((d) => d.id === 'd-tea')?.portions.value ?? 0;
    const expected = Math.ceil((Math.min(people, tea) + Math.max(0, tea - people) * parameter('things.newCup').value) * (1 + parameter('things.spare').value));
    expect(countOf(event, 'hot-cups')).toBe(expected);
  });

  it('more cups for longer stays, more of everything for more guests', () => {
    expect(countOf(party(40, {}, 240), 'cold-cups')).toBeGreaterThan(countOf(party(40, {}, 90), 'cold-cups'));
    fc.assert(fc.property(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 60 }), (n, more) => {
      const [few, many] = [needsOf(party(n)), needsOf(party(n + more))];
      for (const need of few) expect(many.find((m) => m.ingredient === need.ingredient && m.origin === need.origin)?.figure.value ?? 0).toBeGreaterThanOrEqual(need.figure.value);
    }), { numRuns: 60 });
  });

  it('only guests who are there for the meal get a plate', () => {
    const rice = recipeOf('rice', 'grain');
    const at = menuEvent([rice], [adults(30, { from: 660, to: 670 }), adults(20, { from: 1000, to: 1010 })], {}, [{ id: 'd-rice', recipe: 'rice', served: { kind: 'between', from: 690, to: 720 } }]);
    expect(countOf(at, 'plates')).toBe(Math.ceil(30 * parameter('things.plates').value * (1 + parameter('things.spare').value) - 1e-9));
  });

  it('no cups, plates or bags for a household day; boxes and labels for what is kept', () => {
    const event = menuEvent([recipeOf('stock', 'soup', { steps: [{ id: 's', name: 'Freeze', keeps: { place: 'freezer', minutes: 9000 } }] })], [], {}, [{ id: 'd-stock', recipe: 'stock', served: { kind: 'fixed', at: 700, portions: 40 } }]);
    const needs = needsOf(event);
    expect([...new Set(needs.map((n) => n.ingredient))].toSorted()).toEqual(['food-boxes', 'labels']);
    // Boxes of 1 L for the freezer, filled to 90 %.
    expect(needs[0]?.figure.value).toBe(Math.ceil((menuOf(event).dishes[0]?.total.amount.toNumber() ?? 0) / 1000 / 0.9));
    expect(needs.find((n) => n.ingredient === 'labels')?.figure.value).toBe(needs[0]?.figure.value);
  });

  it('every working recomputes, uses what it shows, and has words', () => {
    const event = party(57, { shopping: { carriesWater: true }, kitchen: { burners: [{ id: 'ring', name: 'Ring', kind: 'outdoorGas', ratedW: 6000 }] } });
    const needs = [...needsOf(event, [needOf('water', 5, 'L', 'd-rice')]), ...gasNeeds(wanted(1.7))];
    expect([...new Set(needs.map((n) => n.ingredient))].toSorted()).toEqual(things.map((t) => t.id).toSorted());
    for (const need of needs) {
      expect(faultsOf(need.figure, ruleIds)).toEqual([]);
      expect(opened(need.ingredient, need.figure).filter((o) => o.working.rule.startsWith('things.')).flatMap(unused)).toEqual([]);
      for (const w of allFigures(need.figure).map((f) => f.working())) expect(isWordId(`rule.${w.rule}`)).toBe(true);
      expect(isWordId(`buying.use.${need.origin}`)).toBe(true);
      expect(need.amount.amount.toNumber()).toBe(need.figure.value);
    }
  });
});

const gas = (kind: string, more: Readonly<Record<string, unknown>> = {}): Event =>
  menuEvent([recipeOf('rice', 'grain')], [adults(10)], { kitchen: { burners: [{ id: 'ring', name: 'Ring', kind, ratedW: 5000 }], ...more } });

describe('gas and water', () => {
  it('gas is the day\u2019s own figure, nothing added; none where none is burned', () => {
    const own = wanted(1.7);
    expect(gasNeeds(own).map((n) => [n.ingredient, n.amount.amount.toString(), n.figure])).toEqual([['gas-bottle', '1.7', own]]);
    expect([gasNeeds(null), gasNeeds(wanted(0))]).toEqual([[], []]);
  });
  it('counts the bottles in the kitchen as in the house', () => {
    const event = gas('lpg', { cylinders: [{ id: 'a', gasKg: 0.5, place: 'outdoor' }] });
    const l = line(planBuying(event, gasNeeds(wanted(0.94))), 'gas-bottle');
    expect([l.larder.amount.toString(), l.packs.map((p) => [p.count, p.size.amount.toString()])]).toEqual(['0.5', [[1, '5']]]);
  });
  it('water is brought only where there is no tap: that of the dishes and some for each guest', () => {
    const event = menuEvent([recipeOf('rice', 'grain')], [adults(10)]);
    expect(needsOf(event, [needOf('water', 5, 'L')]).some((n) => n.ingredient === 'carried-water')).toBe(false);
    const dry: Event = { ...event, shopping: { ownLines: [], borrowed: [], marks: [], shoppers: [], ownThings: [], carriesWater: true } };
    expect(needsOf(dry, [needOf('water', 5, 'L'), needOf('salt', 9, 'g')]).find((n) => n.ingredient === 'carried-water')?.figure.value).toBe(10);
  });
});

describe('things of the household\u2019s own', () => {
  it('are counted and not bought', () => {
    const event = party(40, { shopping: { ownThings: ['hot-cups'] } });
    const plan = planBuying(event, needsOf(event));
    expect(plan.lines.some((l) => l.ingredient === 'hot-cups')).toBe(false);
    expect(plan.ownThings.map((o) => [o.thing, o.need.amount.toNumber()])).toEqual([['hot-cups', countOf(event, 'hot-cups')]]);
    expect(plan.lines.some((l) => l.ingredient === 'cold-cups' && l.kind === 'thing')).toBe(true);
    expect(plan.unknown).toEqual([]);
  });
});
