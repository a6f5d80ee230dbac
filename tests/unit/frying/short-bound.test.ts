import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortWindows, wholeShort, type SharedDish } from '../../../shared/frying/exact';
import { fewestShort, type TinyDish } from './brute-several';

const bound = (dishes: readonly SharedDish[], pans: readonly number[]): number => shortWindows(dishes, pans).reduce((sum, w) => sum + wholeShort(w), 0);
const oneLine = (d: TinyDish): SharedDish => ({ wanted: d.wanted, hold: d.hold, fry: [d.fry], cycle: [d.cycle], load: [d.load] });
const minutesOf = (counts: readonly number[]): number[] => counts.flatMap((n, i) => Array.from({ length: n }, () => 20 + i));

const both = (d: TinyDish): SharedDish => ({ wanted: d.wanted, hold: d.hold, fry: [d.fry, d.fry], cycle: [d.cycle, d.cycle + 1], load: [d.load, d.load] });
const slower = (d: TinyDish): TinyDish => ({ ...d, cycle: d.cycle + 1 });

describe('the least that goes short when several dishes share pans', () => {
  it('is what two dishes wanted at one minute cannot be: one pan, no hold, three each', () => {
    const dish: TinyDish = { wanted: [20, 20, 20], load: 3, fry: 4, cycle: 4, hold: 0 };
    // One batch is in time; the other dish has nothing.
    expect(fewestShort([dish, dish], 1)).toBe(3);
    expect(bound([oneLine(dish), oneLine(dish)], [1])).toBe(3);
    expect(bound([oneLine(dish), oneLine(dish)], [2])).toBe(0);
  });
  it('adds up stretches that have nothing to do with each other', () => {
    const dish: TinyDish = { wanted: [20, 20, 20, 20, 60, 60, 60, 60], load: 3, fry: 4, cycle: 4, hold: 0 };
    expect(bound([oneLine(dish), oneLine({ ...dish, wanted: [20, 60] })], [1])).toBe(4);
    expect(fewestShort([dish, { ...dish, wanted: [20, 60] }], 1)).toBe(4);
  });
  it('counts all of a dish that no pan fries', () => {
    expect(bound([{ wanted: [20, 21], hold: 5, fry: [null], cycle: [null], load: [null] }], [1])).toBe(2);
  });
  const tiny = fc.record({ counts: fc.array(fc.nat(3), { minLength: 4, maxLength: 9 }), load: fc.integer({ min: 1, max: 4 }), fry: fc.integer({ min: 1, max: 3 }), after: fc.nat(2), hold: fc.nat(4) })
    .map(({ counts, load, fry, after, hold }): TinyDish => ({ wanted: minutesOf(counts), load, fry, cycle: fry + after, hold }));
  it('is never more than the best of all plans leaves short, and often just that: two dishes, one or two pans', () => {
    let [short, exact, proven, all] = [0, 0, 0, 0];
    fc.assert(fc.property(tiny, tiny, fc.integer({ min: 1, max: 2 }), (a, b, pans) => {
      const truth = fewestShort([a, b], pans);
      const least = bound([oneLine(a), oneLine(b)], [pans]);
      expect(least).toBeLessThanOrEqual(truth);
      short += Number(truth > 0);
      exact += Number(truth > 0 && truth === least);
      proven += least;
      all += truth;
    }), { numRuns: 150, seed: 20261125 });
    expect(short).toBeGreaterThan(40);
    expect(proven / all).toBeGreaterThan(0.75);
    expect(exact / short).toBeGreaterThan(0.2);
  });
  it('on two unequal lines is never more than one line with the better of both would leave short', () => {
    fc.assert(fc.property(tiny, tiny, (a, b) => {
      // Two pans of which one is slower: between two slow ones and two quick ones.
      expect(bound([both(a), both(b)], [1, 1])).toBeLessThanOrEqual(fewestShort([slower(a), slower(b)], 2));
      expect(bound([both(a), both(b)], [1, 1])).toBeGreaterThanOrEqual(0);
    }), { numRuns: 60, seed: 20261125 });
  });
});
