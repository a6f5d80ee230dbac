import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { busiest, servingsOf } from '../../../shared/cooking/servings';
import { minutes } from '../../../shared/measure';

const series = (values: readonly number[]) => ({ fromMinute: minutes(600), values });
/** The fewest stretches by trying: from each first uncovered minute every shorter stretch, too. */
function fewest(wanted: readonly number[], longest: number): number {
  const best = new Map<number, number>();
  const from = (i: number): number => {
    const at = wanted.findIndex((v, k) => k >= i && v > 0);
    if (at < 0) return 0;
    const known = best.get(at);
    if (known !== undefined) return known;
    const found = 1 + Math.min(...Array.from({ length: longest + 1 }, (_, d) => from(at + d + 1)));
    best.set(at, found);
    return found;
  };
  return from(0);
}

describe('servings', () => {
  it('one where everybody eats within the time, none where nobody eats', () => {
    expect(servingsOf(series([0, 2, 3, 0]), 60)).toEqual([{ number: 1, from: 601, to: 602, portions: 5 }]);
    expect(servingsOf(series([0, 0]), 60)).toEqual([]);
  });
  it('gaps between waves fall between two servings', () => {
    const wanted = [...Array<number>(30).fill(1), ...Array<number>(60).fill(0), ...Array<number>(30).fill(1)];
    expect(servingsOf(series(wanted), 100).map((s) => [s.from, s.to, s.portions])).toEqual([[600, 629, 30], [690, 719, 30]]);
  });
  it('the fewest, each within its time, every portion once', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 60 }), fc.integer({ min: 1, max: 30 }), (wanted, longest) => {
      const found = servingsOf(series(wanted), longest);
      for (const s of found) expect(s.to - s.from).toBeLessThanOrEqual(longest);
      for (const [i, s] of found.entries()) expect(s.from).toBeGreaterThan(found[i - 1]?.to ?? 0);
      for (const s of found) expect(wanted.slice(s.from - 600, s.to - 600 + 1).reduce((a, b) => a + b, 0)).toBe(s.portions);
      expect(found.reduce((n, s) => n + s.portions, 0)).toBe(wanted.reduce((a, b) => a + b, 0));
      expect(found.length).toBe(fewest(wanted, longest));
    }), { numRuns: 1000 });
  });
  it('finds the busiest hour, at a quarter of an hour', () => {
    const wanted = Array.from({ length: 240 }, (_, i) => (i >= 75 && i < 130 ? 2 : 0.5));
    expect(busiest(series(wanted), 60)).toMatchObject({ from: 675, to: 735 });
    expect(busiest(series([0, 0]), 60)).toBeNull();
  });
});
