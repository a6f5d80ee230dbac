import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Series } from '../../../shared/measure';
import { adults, dish, drinkOf, menuEvent, menuOf, piecesOf, recipeOf, sum } from './make-menu';

/** Value of a series in a minute; 0 outside. */
const seriesAt = (s: Series, at: number): number => s.values[at - s.fromMinute] ?? 0;

const wave = fc.record({
  from: fc.integer({ min: 600, max: 900 }), length: fc.integer({ min: 0, max: 240 }),
  adult: fc.integer({ min: 0, max: 120 }), age4to6: fc.integer({ min: 0, max: 30 }), age10to12: fc.integer({ min: 0, max: 30 }), olderAdult: fc.integer({ min: 0, max: 30 }),
  shortest: fc.integer({ min: 5, max: 120 }), usual: fc.integer({ min: 0, max: 120 }), longest: fc.integer({ min: 0, max: 120 }),
}).map((w) => ({
  from: w.from, to: w.from + w.length,
  counts: { adult: w.adult, age4to6: w.age4to6, age10to12: w.age10to12, olderAdult: w.olderAdult },
  stay: { shortest: w.shortest, usual: w.shortest + w.usual, longest: w.shortest + w.usual + w.longest },
}));
const waves = fc.array(wave, { minLength: 1, maxLength: 5 });

const recipes = [piecesOf('frit', 'friedSnack'), piecesOf('bread', 'bread'), recipeOf('rice', 'grain'), drinkOf('tea', true, true), drinkOf('water', false, false)];
const dishes = [
  { id: 'frit', recipe: 'frit' }, { id: 'bread', recipe: 'bread', takeUp: 0.7 },
  { id: 'rice', recipe: 'rice', served: { kind: 'between', from: 760, to: 850 } },
  { id: 'tea', recipe: 'tea' }, { id: 'water', recipe: 'water', takeUp: 0.4 },
];

describe('demand by minute', () => {
  it('adds up to the whole total, is whole and never negative, and the waves add up too', () => {
    fc.assert(fc.property(waves, (ws) => {
      for (const d of menuOf(menuEvent(recipes, ws, {}, dishes)).dishes) {
        expect(sum(d.demand.values)).toBe(d.portions.value);
        expect(d.demand.values.every((v) => Number.isInteger(v) && v >= 0)).toBe(true);
        expect(sum(d.byWave.map((w) => w.portions))).toBe(d.portions.value);
      }
    }), { numRuns: 60 });
  });

  it('lies between the first arrival and the last leaving, and a meal within its window', () => {
    fc.assert(fc.property(waves, (ws) => {
      for (const d of menuOf(menuEvent(recipes, ws, {}, dishes)).dishes) {
        if (d.firstServed === null || d.lastServed === null) continue;
        expect(d.firstServed).toBeGreaterThanOrEqual(Math.min(...ws.map((w) => w.from)));
        expect(d.lastServed).toBeLessThanOrEqual(Math.max(...ws.map((w) => Math.max(w.to, w.from + 1) + w.stay.longest)));
        expect(d.id !== 'rice' || (d.firstServed >= 760 && d.lastServed < 850)).toBe(true);
      }
    }), { numRuns: 60 });
  });

  it('adding a guest never lowers a figure', () => {
    const band = fc.constantFrom('adult', 'age4to6', 'age10to12', 'olderAdult');
    fc.assert(fc.property(waves, band, (ws, more) => {
      const [first, ...rest] = ws;
      if (first === undefined) return;
      const before = menuOf(menuEvent(recipes, ws, {}, dishes));
      const grown = { ...first, counts: { ...first.counts, [more]: (first.counts[more] ?? 0) + 1 } };
      const after = menuOf(menuEvent(recipes, [grown, ...rest], {}, dishes));
      for (const d of before.dishes) {
        const now = dish(after, d.id);
        expect(now.portions.value).toBeGreaterThanOrEqual(d.portions.value);
        expect(now.total.amount.gte(d.total.amount)).toBe(true);
        now.lines.forEach((line, i) => expect(line.amount.amount.gte(d.lines[i]?.amount.amount ?? 0)).toBe(true));
      }
    }), { numRuns: 60 });
  });

  it('eats 60 % of a snack in the first half hour of the stay', () => {
    // All arrive within the minute of 12:00 and stay three hours.
    const plan = dish(menuOf(menuEvent([piecesOf('a', 'friedSnack')], [adults(1000, { from: 720, to: 720, stay: { shortest: 180, usual: 180, longest: 180 } })])), 'd-a');
    const early = sum(Array.from({ length: 30 }, (_, i) => seriesAt(plan.demand, 720 + i)));
    expect(early / plan.portions.value).toBeGreaterThan(0.585);
    expect(early / plan.portions.value).toBeLessThan(0.605);
    expect(seriesAt(plan.demand, 901)).toBe(0);
  });

  it('spreads drinks evenly over the stay', () => {
    const plan = dish(menuOf(menuEvent([drinkOf('tea', true, true)], [adults(3000, { from: 720, to: 720, stay: { shortest: 60, usual: 60, longest: 60 } })])), 'd-tea');
    const inner = Array.from({ length: 58 }, (_, i) => seriesAt(plan.demand, 721 + i));
    expect(Math.min(...inner)).toBe(100);
    expect(Math.max(...inner)).toBe(100);
  });

  it('rises and falls with the wave: a trapezoid of arrivals and stay', () => {
    const plan = dish(menuOf(menuEvent([drinkOf('tea', true, true)], [adults(6000, { from: 720, to: 780, stay: { shortest: 60, usual: 60, longest: 60 } })])), 'd-tea');
    const total = plan.portions.value;
    const until = (end: number) => sum(plan.demand.values.slice(0, end - plan.demand.fromMinute)) / total;
    expect(until(780)).toBeCloseTo(0.5, 3);
    expect(until(750)).toBeCloseTo(0.125, 3);
    expect(until(840)).toBe(1);
  });
});
