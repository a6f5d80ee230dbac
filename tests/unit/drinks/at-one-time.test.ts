import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wantedCups } from '../../../shared/drinks/wanted-cups';
import type { Event } from '../../../shared/event';
import { drinkEvent, drinksOf, flask, type DrinkChange } from './drink-event';

const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);
/** Tea for so many cups, all served at 13:00. */
function atOne(cups: number, change: DrinkChange = {}): Event {
  const event = drinkEvent({ adults: Math.max(1, cups), ...change });
  return { ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((d) => ({ ...d, served: { kind: 'fixed' as const, at: 780, portions: cups } })) } };
}
const cupsOf = (event: Event, vessels: number, perMinute: number) => wantedCups(event, drinksOf(event).menu.dishes[0]!, vessels, perMinute);

describe('a drink served at one time', () => {
  it.each([1, 10, 40, 60, 100])('is poured to all %i who want it', (cups) => {
    const { drinks } = drinksOf(atOne(cups));
    expect(drinks.problems).toEqual([]);
    expect(drinks.totals[0]!.unmetLitres).toBe(0);
    expect(drinks.totals[0]!.served.value).toBeCloseTo(cups * 0.15, 9);
  });
  it('is poured over the minutes the taps take, half before and half after its time: 60 cups from one flask in ten minutes', () => {
    expect(cupsOf(atOne(60), 1, 6)).toEqual({ fromMinute: 775, values: Array.from({ length: 10 }, () => 6) });
    expect(cupsOf(atOne(60), 2, 6)).toEqual({ fromMinute: 778, values: [12, 12, 12, 12, 12] });
    expect(cupsOf(atOne(20), 1, 6)).toEqual({ fromMinute: 778, values: [6, 6, 6, 2] });
    expect(cupsOf(atOne(4), 1, 6)).toEqual({ fromMinute: 780, values: [4] });
  });
  it('never loses or adds a cup', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 5 }), fc.double({ min: 1, max: 12, noNaN: true }), (cups, vessels, rate) => {
      const { values, fromMinute } = cupsOf(atOne(cups), vessels, rate);
      expect(sum(values)).toBeCloseTo(cups, 9);
      expect(Math.min(...values)).toBeGreaterThan(0);
      expect(Math.abs(fromMinute + values.length / 2 - 780)).toBeLessThanOrEqual(1);
    }), { numRuns: 60 });
  });
  it('from a flask that is too small for all: it is filled again in between', () => {
    const { drinks } = drinksOf(atOne(60, { dispensers: [{ ...flask, litres: 5 }] }));
    expect(new Set(drinks.fills.map((f) => f.at)).size).toBe(2);
    expect(drinks.totals[0]!.unmetLitres).toBe(0);
  });
  it('stands ready before the first cup, and follows the household\u2019s own tap', () => {
    const event = { ...atOne(60), houseFigures: [{ figure: 'drinks.tapPerMinute', value: 3, unit: '1/min', why: 'Slow tap.' }] };
    expect(drinksOf(event).drinks.fills[0]!.at).toBeLessThanOrEqual(770 - 10);
    expect(drinksOf(atOne(60)).drinks.fills[0]!.at).toBeLessThanOrEqual(775 - 10);
  });
  it('that the pots and burners cannot make in time says so, and serves what there is', () => {
    const { drinks } = drinksOf(atOne(400));
    expect(drinks.problems.map((p) => p.id)).toEqual(['drinks.problem.unmet']);
    expect(drinks.totals[0]!.served.value).toBeGreaterThan(8);
  });
  it('at other times is wanted when people come for it', () => {
    const event = drinkEvent();
    const dish = drinksOf(event).menu.dishes[0]!;
    expect(wantedCups(event, dish, 1, 6)).toBe(dish.demand);
  });
});
