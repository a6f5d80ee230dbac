import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { looseAmount } from '../../../shared/buying/loose';
import { choosePacks, readySizes } from '../../../shared/buying/packs';
import { amountOf, type UnitId } from '../../../shared/measure';

const choose = (sizes: readonly (number | string)[], needed: number | string) => {
  const ready = readySizes(sizes.map((s) => new Big(s)));
  return ready === null ? [] : choosePacks(ready, new Big(needed)).map((p) => [p.count, p.size.toNumber()]);
};
const total = (packs: readonly (readonly (number | undefined)[])[]) => packs.reduce((sum, [count = 0, size = 0]) => sum + count * size, 0);

/** Smallest total and then fewest packs, by trying everything. */
function bestByTrying(sizes: readonly number[], needed: number): readonly [number, number] {
  let best: readonly [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const walk = (i: number, sum: number, packs: number): void => {
    if (sum >= needed) {
      if (sum < best[0] || (sum === best[0] && packs < best[1])) best = [sum, packs];
      return;
    }
    for (let at = i; at < sizes.length; at += 1) walk(at, sum + (sizes[at] ?? 1), packs + 1);
  };
  walk(0, 0, 0);
  return best;
}

describe('choosing packs', () => {
  it('is exact: least left over, then fewest packs, as trying everything finds', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({ min: 2, max: 15 }), { minLength: 1, maxLength: 4 }), fc.integer({ min: 0, max: 60 }), (sizes, needed) => {
      const found = choose(sizes, needed);
      const [least, fewest] = bestByTrying(sizes, needed);
      expect(total(found)).toBe(needed === 0 ? 0 : least);
      expect(found.reduce((n, [count = 0]) => n + count, 0)).toBe(needed === 0 ? 0 : fewest);
    }), { numRuns: 1000 });
  });

  it('stays exact for large needs, where the largest pack does most', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 400_000 }), (needed) => {
      const packs = choose([500, 1000, 2000, 5000], needed);
      expect(total(packs)).toBe(Math.ceil(needed / 500) * 500);
      expect(packs.reduce((n, [count = 0, size]) => n + (size === 5000 ? 0 : count), 0)).toBeLessThanOrEqual(4);
    }));
  });

  it.each([
    [['0.5', '1', '2'], '3.96', [[2, 2]]], [['1', '5', '10'], '4.1', [[1, 5]]], [['6', '10', '12'], '26', [[1, 10], [1, 10], [1, 6]]], [['1'], '0', []], [[], '3', []],
  ])('of %j for %s', (sizes, needed, packs) => {
    const expected = packs.length === 3 ? [[2, 10], [1, 6]] : packs;
    expect(choose(sizes, needed)).toEqual(expected);
  });

  it('takes fewer packs where a little more is allowed, exactly as trying everything finds', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({ min: 2, max: 15 }), { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 20 }), (sizes, needed, extra) => {
      const ready = readySizes(sizes.map((n) => new Big(n)));
      const found = ready === null ? [] : choosePacks(ready, new Big(needed), new Big(extra));
      const bought = found.reduce((sum, p) => sum + p.count * p.size.toNumber(), 0);
      const packs = found.reduce((n, p) => n + p.count, 0);
      const [least] = bestByTrying(sizes, needed);
      // Fewest packs of every total that is allowed: one more than the least, two more, and so on.
      const allowed = Array.from({ length: extra + 1 }, (_, more) => bestByTrying(sizes, least + more)).filter(([sum]) => sum <= least + extra);
      const fewest = Math.min(...allowed.map(([, n]) => n));
      expect([bought >= needed, bought <= least + extra, packs]).toEqual([true, true, fewest]);
      expect(bought).toBe(Math.min(...allowed.filter(([, n]) => n === fewest).map(([sum]) => sum)));
    }), { numRuns: 1000 });
  });

  it('takes five gallons rather than three gallons and five small bottles', () => {
    const ready = readySizes([new Big('48'), new Big('128')]);
    const packs = (extra: number) => (ready === null ? [] : choosePacks(ready, new Big(620), new Big(extra)).map((p) => [p.count, p.size.toNumber()]));
    expect([packs(0), packs(31)]).toEqual([[[3, 128], [5, 48]], [[5, 128]]]);
  });

  it('covers the need with sizes that share no step', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 90_000 }), (needed) => {
      const packs = choose(['1419.529', '3785.411784', '17237.492'], needed);
      expect(total(packs)).toBeGreaterThanOrEqual(needed);
      expect(total(packs) - needed).toBeLessThan(1419.53);
    }));
  });
});

describe('loose goods', () => {
  it('round up to what a counter weighs out, by less than a quarter', () => {
    fc.assert(fc.property(fc.integer({ min: 20, max: 100_000 }), fc.constantFrom<UnitId>('g', 'ml'), (n, unit) => {
      const loose = looseAmount(amountOf(n, unit)).amount.toNumber();
      expect(loose).toBeGreaterThanOrEqual(n);
      expect(loose).toBeLessThanOrEqual(n * 1.25);
    }));
  });
  it.each([['g', '76.7', '80'], ['kg', '0.0767', '0.08'], ['kg', '2.31', '2.4'], ['piece', '3.2', '4'], ['lb', '0.9', '0.9375'], ['oz', '3.1', '3.25'], ['g', '0', '0'], ['cup', '1.1', '1.25']] as const)('%s %s becomes %s', (unit, from, to) => {
    expect(looseAmount(amountOf(from, unit)).amount.toString()).toBe(to);
  });
});
