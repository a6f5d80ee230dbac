import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent, type Event } from '../../../shared/event';
import { setHeadcount } from '../../../shared/edit';
import { perHead } from '../../../shared/menu';
import { planJson } from '../../../shared/exchange';
import { entered, figure, just, recompute, type Figure, type Working } from '../../../shared/figure';
import { fryingRules } from '../../../shared/figure/register/frying';
import { guestsRules } from '../../../shared/figure/register/guests';
import { menuRules } from '../../../shared/figure/register/menu';
import { plan, type Plan } from '../../../shared/plan';
import { sourceTitle } from '../../../shared/reference';
import { faults, shortBuys, type Has, type Json } from './checker';
import { fewestBatches } from './recount';
import { definitions, opened, unused, wrongEntries, type Opened } from './workings';

/** Rooms whose workings are held to this. */
const held = new Set<string>([...guestsRules, ...menuRules, ...fryingRules]);

const demos = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const;
const load = (name: string): Event => {
  const parsed = parseEvent(readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.event;
};
const has = (e: Event): Has => ({ burners: e.kitchen.burners.length, pans: e.kitchen.pans.map((p) => p.id), people: e.people.map((p) => p.id), counterPlaces: e.kitchen.counterPlaces, ovens: e.kitchen.ovens, pots: e.kitchen.pots.length });
const json = (p: Plan): Json => JSON.parse(JSON.stringify(planJson(p)));
const larder = (e: Event, p: Plan): Map<string, number> => new Map(p.buying.lines.filter((l) => e.larder.some((x) => x.ingredient === l.ingredient) || (l.ingredient === 'gas-bottle' && e.kitchen.cylinders.length > 0)).map((l) => [l.ingredient, Number(l.larder.amount)]));
const withPeople = (event: Event, adults: number, children: number): Event => {
  const edited = setHeadcount(event, adults, children);
  if (!('event' in edited)) throw new Error('headcount refused');
  return edited.event;
};

describe.each(demos)('demo %s', (name) => {
  const event = load(name);
  const made = plan(event);

  it('keeps every promise an independent checker knows of', () => {
    expect(faults(json(made), has(event))).toEqual([]);
    expect(shortBuys(json(made), larder(event, made))).toEqual([]);
  });

  it('is the same bit for bit when planned again', () => {
    expect(JSON.stringify(planJson(plan(load(name))))).toBe(JSON.stringify(planJson(made)));
  });

  it('explains every figure down to named sources, and each sum gives the figure', () => {
    const figures = figuresIn(made);
    expect(figures.length).toBeGreaterThan(10);
    for (const { where, figure } of figures) checkFigure(where, figure, 0);
  });
});

/** Each fault once, whichever plan it is found in. */
const once = (faults: readonly string[]): string[] => [...new Map(faults.map((f) => [f.replace(/^\S+ /, ''), f])).values()].slice(0, 40);
/** A figure with an idle input that calls itself a definition, and an entry that is not there. */
const figureOf = (value: number): Figure => figure(value, '', () => ({ rule: 'fry.load', terms: [entered('a', { text: '' }, value, '', 'kitchen.roomC'), { key: 'b', label: { text: '' }, value, unit: '', origin: { kind: 'definition' } }], sum: just('a') }));

/** A crowd for whom both fried dishes share one station with so many pans, on bottled gas: dishes go short together, and pans pause. */
const oneStation = (event: Event, pans: number): Event => {
  const { kitchen } = event;
  const [station] = kitchen.stations;
  const all = kitchen.stations.flatMap((s) => s.pans).slice(0, pans);
  const stations = station === undefined ? [] : [{ ...station, pans: all, dishes: kitchen.stations.flatMap((s) => s.dishes) }];
  return { ...withPeople(event, 400, 120), kitchen: { ...kitchen, stations, burners: kitchen.burners.map((b) => ({ ...b, kind: 'lpg' as const })) } };
};

/** A plan with what one adult is given in all, which the page works out beside it. */
const withHeads = (made: Plan): unknown => ({ ...made, heads: perHead(made.event, made.menu) });

describe('workings say what was done, for the demos and for other headcounts, covers and kitchens', () => {
  const events = demos.flatMap((name) => {
    const event = load(name);
    if (event.guests.waves.length === 0) return [event];
    const other = { ...withPeople(event, 90, 30), preferences: { ...event.preferences, cover: 0.8 }, kitchen: { ...event.kitchen, pans: event.kitchen.pans.map((p) => ({ ...p, oilLitres: p.oilLitres * 0.8 })) } };
    return [event, other, withPeople(event, 400, 120), withPeople(event, 0, 0), ...(name === 'lantern-evening' ? [oneStation(event, 1), oneStation(event, 2)] : [])];
  });
  const plans = events.map((event) => ({ event, opened: figuresIn(withHeads(plan(event))).flatMap((f) => opened(f.where, f.figure)).filter((o) => held.has(o.working.rule)) }));
  it('opens every rule of these rooms but two for a burner that cannot heat its pan, and what another plan would save, which is worked out apart', () => {
    const seen = new Set(plans.flatMap((p) => p.opened.map((o) => o.working.rule)));
    expect([...held].filter((rule) => !seen.has(rule))).toEqual(['fry.turnMinutes', 'fry.worstCaseDrop', 'fry.saved']);
  });
  it('notices an idle input, an entry that is not there, and a definition that varies', () => {
    const [one, two] = [opened('x', figureOf(1)), opened('x', figureOf(2))];
    expect(one.flatMap(unused)).toHaveLength(1);
    expect(one.flatMap((o) => wrongEntries(load('lantern-evening'), o))).toHaveLength(1);
    expect([...definitions([...one, ...two]).values()].map((v) => v.size)).toEqual([2]);
  });
  it('uses every input it shows', () => expect(once(plans.flatMap((p) => p.opened.flatMap(unused)))).toEqual([]));
  it('shows as entered what stands in that field of the event', () => expect(once(plans.flatMap((p) => p.opened.flatMap((o) => wrongEntries(p.event, o))))).toEqual([]));
  it('calls a definition only what is the same in every event', () => {
    const all: Opened[] = plans.flatMap((p) => p.opened);
    expect([...definitions(all)].filter(([, values]) => values.size > 1).map(([key, values]) => `${key}: ${[...values].slice(0, 4).join(' or ')}`)).toEqual([]);
  });
});

describe('the checker itself', () => {
  const event = load('lantern-evening');
  const base = json(plan(event));
  const broken: [string, (j: Json) => void][] = [
    ['two batches in one pan', (j) => { const [a, b] = j.frying.batches; if (a && b) { b.pan = a.pan; b.dropAt = a.dropAt; } }],
    ['a batch too big', (j) => { const b = j.frying.batches[0]; if (b) b.pieces = 999; }],
    ['bowl too small', (j) => { const b = j.frying.bowls[0]; if (b) b.pieces = 1; }],
    ['a portion from nowhere', (j) => { const s = j.frying.served[0]; if (s) { s.portions[0] = 99; } }],
    ['a dispenser over the rim', (j) => { const d = j.drinks.dispensers[0]; if (d) d.litres[3] = d.capacityLitres + 1; }],
    ['a person in two places', (j) => { for (const t of j.day.tasks) if (t.who.length > 0) { t.attention = 1; t.start = 700; t.end = 800; } }],
    ['packs that do not add up', (j) => { const l = j.shopping.lines.find((x) => x.packs.length > 0); if (l?.packs[0]) l.packs[0].count += 1; }],
  ];
  it.each(broken)('notices %s', (_name, breakIt) => {
    const copy = structuredClone(base);
    breakIt(copy);
    expect(faults(copy, has(event)).length).toBeGreaterThan(0);
  });
});

describe('a changed headcount', () => {
  const event = load('lantern-evening');

  it('gives the fewest batches there can be, counted independently from the demand per minute', () => {
    for (const [adults, children] of [[68, 21], [90, 21], [75, 30], [40, 8]] as const) {
      const made = plan(withPeople(event, adults, children));
      for (const served of made.frying.served) {
        const loads = made.frying.loads.filter((l) => l.dish === served.dish);
        const batches = made.frying.batches.filter((b) => b.dish === served.dish);
        const [one] = loads;
        if (loads.length !== 1 || one === undefined || served.unmet.some((u) => u > 0)) continue;
        if (made.frying.loads.filter((l) => l.pan === one.pan).length > 1) continue;
        const dish = made.menu.dishes.find((d) => d.id === served.dish);
        const recipe = dish?.recipe.frying;
        if (!dish || !recipe) throw new Error(`no dish ${served.dish}`);
        const count = fewestBatches({
          demand: [...dish.demand.values], load: one.pieces.value, fryMinutes: Math.ceil(one.fryMinutes), cycleMinutes: Math.ceil(one.cycleMinutes.value),
          hold: recipe.holdMinutes, lead: event.preferences.fryLeadMinutes, earliestDrop: -2000,
        });
        expect(batches.length, `${served.dish} for ${adults} adults`).toBe(count);
      }
    }
  });

  it('90 adults: more batches, bowls, tea and flour than 68, and every promise kept', () => {
    const before = plan(event), after = plan(withPeople(event, 90, 21));
    expect(after.guests.adults.value).toBe(90);
    expect(after.frying.batches.length).toBeGreaterThan(before.frying.batches.length);
    expect(after.frying.bowls.length).toBeGreaterThanOrEqual(before.frying.bowls.length);
    expect(after.frying.pieces.value).toBeGreaterThan(before.frying.pieces.value);
    for (const line of before.buying.lines) {
      const same = after.buying.lines.find((l) => l.ingredient === line.ingredient);
      expect(same?.need.amount.gte(line.need.amount), line.ingredient).toBe(true);
    }
    expect(after.day.tasks.filter((t) => t.kind === 'fry').length).toBe(after.frying.batches.length);
    const event90 = withPeople(event, 90, 21);
    expect(faults(json(after), has(event90))).toEqual([]);
  });

  it('keeps every promise for many headcounts, also when the kitchen cannot keep up', () => {
    for (let adults = 0; adults <= 400; adults += 23) {
      const changed = withPeople(event, adults, Math.round(adults / 3));
      expect(faults(json(plan(changed)), has(changed)), `${adults} adults`).toEqual([]);
    }
  });
});

interface Found { readonly where: string; readonly figure: Figure }

/** Every figure reachable in a plan. */
function figuresIn(value: unknown, where = 'plan', seen = new Set<unknown>()): Found[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  if ('working' in value && typeof value.working === 'function') return [{ where, figure: value as Figure }];
  return Object.entries(value).filter(([key]) => key !== 'event' && key !== 'recipe').flatMap(([key, part]) => figuresIn(part, `${where}.${key}`, seen));
}

function checkFigure(where: string, figure: Figure, depth: number): void {
  expect(depth, `${where}: a working that never ends`).toBeLessThan(12);
  const working: Working = figure.working();
  expect(working.terms.length, `${where}: no inputs`).toBeGreaterThan(0);
  expect(Math.abs(recompute(working) - figure.value), `${where}: rule ${working.rule} gives ${recompute(working)}, shown ${figure.value}`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(figure.value)));
  for (const term of working.terms) {
    expect((term.origin === undefined) !== (term.figure === undefined), `${where}.${term.key}: needs a source or a working of its own`).toBe(true);
    if (term.figure) checkFigure(`${where}.${term.key}`, term.figure, depth + 1);
    const source = term.origin?.kind === 'table' ? term.origin.source : 'common-practice';
    expect(sourceTitle(source), `${where}.${term.key}: unknown source ${source}`).toBeDefined();
  }
}
