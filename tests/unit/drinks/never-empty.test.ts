import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settle } from '../../../shared/household';
import { firstWanted } from '../../../shared/drinks/first-wanted';
import type { Event } from '../../../shared/event';
import { demo } from '../demo/demo';
import { drinkEvent, drinksOf, flask, hob } from './drink-event';

const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);
const fillsOf = (event: Event, dispenser = 'flask') => drinksOf(event).drinks.fills.filter((f) => f.dispenser === dispenser);

/** Minutes in which somebody wants a drink and every vessel of it is empty, though nothing is reported unmet. */
function dryMinutes(event: Event): string[] {
  const { drinks, menu } = drinksOf(event);
  return drinks.totals.filter((t) => t.unmetLitres <= 1e-6).flatMap((t) => {
    const { demand, id } = menu.dishes.find((d) => d.id === t.drink)!;
    const vessels = drinks.dispensers.filter((d) => d.drink === id);
    return demand.values.flatMap((cups, i) => {
      const at = demand.fromMinute + i;
      return cups > 0 && !vessels.some((v) => (v.litres[at - v.fromMinute] ?? 0) > 1e-9) ? [`${id} at ${at}`] : [];
    });
  });
}

const kitchens = fc.record({
  adults: fc.integer({ min: 1, max: 200 }), litres: fc.double({ min: 2, max: 20, noNaN: true }), good: fc.integer({ min: 30, max: 240 }), above: fc.option(fc.integer({ min: 40, max: 75 })),
  insulation: fc.constantFrom('foam', 'vacuum', 'none', 'heated'), vessels: fc.integer({ min: 1, max: 3 }), water: fc.boolean(), watts: fc.integer({ min: 1500, max: 6000 }),
}).map((c) => drinkEvent({
  adults: c.adults, water: c.water, tea: { goodForMinutes: c.good, serveAboveC: c.above }, burners: [{ ...hob, ratedW: c.watts }, { ...hob, id: 'hob-2', ratedW: c.watts }],
  dispensers: Array.from({ length: c.vessels }, (_, i) => ({ ...flask, id: `flask-${i}`, litres: c.litres, insulation: c.insulation })),
}));

describe('a vessel of a drink people want', () => {
  it('is never empty in a minute with demand unless the drink is reported unmet', () => {
    fc.assert(fc.property(kitchens, (event) => { expect(dryMinutes(event)).toEqual([]); }), { numRuns: 100 });
  });
  it.each(['lantern-evening', 'school-fair-stall'] as const)('is never empty from its first filling to its last cup in %s', (name) => {
    const event = demo(name);
    const { drinks } = drinksOf(event);
    expect(dryMinutes(event)).toEqual([]);
    for (const d of drinks.dispensers) expect(d.litres.filter((l) => l <= 1e-9)).toEqual([]);
  });
});

describe('the first filling', () => {
  it.each(['lantern-evening', 'school-fair-stall'] as const)('of each drink stands ready ten minutes before anybody can want it in %s', (name) => {
    const event = demo(name);
    const { drinks, menu } = drinksOf(event);
    for (const d of drinks.dispensers) {
      const dish = menu.dishes.find((x) => x.id === d.drink)!;
      expect(Math.min(...drinks.fills.filter((f) => f.dispenser === d.id).map((f) => f.at))).toBeLessThanOrEqual(firstWanted(event, dish, dish.firstServed!) - 10);
    }
  });
  it('follows the household\u2019s own lead', () => {
    const event = { ...drinkEvent(), houseFigures: [{ figure: 'brew.fillLead', value: 25, unit: 'min', why: 'One pair of hands.' }] };
    expect(settle(event, 'brew.fillLead').value).toBe(25);
    expect(fillsOf(event)[0]!.at).toBe(720 - 25);
    expect(fillsOf(drinkEvent())[0]!.at).toBe(720 - 10);
  });
  it('counts from the doors, the first arrival or the time a drink comes out, whichever is last, and never after the first cup', () => {
    const event = drinkEvent();
    const dish = drinksOf(event).menu.dishes[0]!;
    const served = (s: Record<string, unknown>): Event => ({ ...event, menu: { ...event.menu, dishes: [{ ...event.menu.dishes[0]!, served: s as never }] } });
    expect(firstWanted(event, dish, 735)).toBe(720);
    expect(firstWanted({ ...event, opensAt: 730 }, dish, 735)).toBe(730);
    expect(firstWanted({ ...event, opensAt: 740 }, dish, 735)).toBe(735);
    expect(firstWanted(served({ kind: 'between', from: 728, to: 800 }), dish, 735)).toBe(728);
    expect(firstWanted(served({ kind: 'fixed', at: 700, portions: 5 }), dish, 700)).toBe(700);
    expect(firstWanted({ ...event, guests: { ...event.guests, waves: [] } }, dish, 735)).toBe(735);
  });
  it('of drinks made by one person is made one after the other', () => {
    const event = { ...drinkEvent({ water: true }), people: [{ ...demo('lantern-evening').people[2]! }] };
    const first = ['flask', 'jug'].map((id) => Math.min(...fillsOf(event, id).map((f) => f.at)));
    expect(Math.abs(first[0]! - first[1]!)).toBeGreaterThanOrEqual(5);
    expect(Math.max(...first)).toBe(710);
  });
});

describe('later fillings', () => {
  it('come some minutes before the vessel is dry and leave at most two cups', () => {
    for (const adults of [40, 80, 120]) {
      for (const f of fillsOf(drinkEvent({ adults })).slice(1)) expect(f.leftLitres).toBeLessThanOrEqual(0.3 + 1e-9);
    }
  });
  it.each([60, 90, 120, 150])('are none for the last cup: %i adults', (adults) => {
    const fills = fillsOf(drinkEvent({ adults, tea: { serveAboveC: null } }));
    const litres = [...new Set(fills.map((f) => f.at))].map((at) => sum(fills.filter((f) => f.at === at).map((f) => f.litres)));
    expect(litres.length).toBeGreaterThan(1);
    expect(litres.at(-1)!).toBeGreaterThan(Math.max(...litres) / 4);
  });
  it('are not made when the one before carries all that is wanted: 66 cups in one flask of 20 L', () => {
    const event = drinkEvent({ adults: 40, tea: { goodForMinutes: 600, serveAboveC: null }, dispensers: [{ ...flask, litres: 20 }], pots: [{ id: 'huge', name: 'Huge', litres: 40 }] });
    expect(fillsOf(event)).toHaveLength(1);
  });
  it('of two flasks: each is drunk to its end while the next stands ready', () => {
    const { drinks } = drinksOf(drinkEvent({ adults: 90, dispensers: [{ ...flask, litres: 4 }, { ...flask, id: 'flask-2', litres: 4 }] }));
    expect(drinks.fills.every((f) => f.leftLitres < 0.15)).toBe(true);
    expect(new Set(drinks.fills.map((f) => f.dispenser))).toEqual(new Set(['flask', 'flask-2']));
    const total = drinks.totals[0]!;
    expect(total.brewed.value).toBeCloseTo(total.served.value + total.leftLitres, 9);
  });
});

describe('edge cases', () => {
  it('nobody comes: nothing is brewed', () => expect(drinksOf(drinkEvent({ adults: 0 })).drinks).toMatchObject({ rounds: [], fills: [], dispensers: [], problems: [] }));
  it('one guest: one small filling', () => {
    const fills = fillsOf(drinkEvent({ adults: 1 }));
    expect(fills.length).toBeGreaterThan(0);
    expect(sum(fills.map((f) => f.litres))).toBeLessThan(1.2);
  });
  it('past midnight the minutes go on counting', () => {
    const event = drinkEvent();
    const late = { ...event, opensAt: 1400, closesAt: 1700, guests: { ...event.guests, waves: event.guests.waves.map((w) => ({ ...w, from: 1410, to: 1500 })) } };
    const { drinks } = drinksOf(late);
    expect(drinks.fills[0]!.at).toBe(1400);
    expect(drinks.fills.at(-1)!.at).toBeGreaterThan(1440);
    expect(drinks.problems).toEqual([]);
  });
});
