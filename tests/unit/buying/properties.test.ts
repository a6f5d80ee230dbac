import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredients, things, type Ingredient } from '../../../shared/reference';
import { ruleIds } from '../../../shared/figure';
import { faultsOf } from '../menu/make-menu';
import { opened, unused } from '../plan/workings';
import { buy, needOf } from './make-buying';

// Rows whose buying unit needs no density: the packs can be recounted from the table by hand.
const plainRow = (r: Ingredient): boolean => r.section !== 'tap' && ['kg', 'g', 'L', 'ml', 'piece'].includes(r.buyUnit.metric) && r.packs.metric.every((p) => p.unit === r.buyUnit.metric || scale(p.unit, r.buyUnit.metric) !== null);
const perBase: Readonly<Record<string, readonly [string, number]>> = { g: ['mass', 1], kg: ['mass', 1000], ml: ['volume', 1], L: ['volume', 1000], piece: ['count', 1] };
function scale(from: string, to: string): number | null {
  const [a, b] = [perBase[from], perBase[to]];
  return a === undefined || b === undefined || a[0] !== b[0] ? null : a[1] / b[1];
}
const rows: readonly Ingredient[] = [...ingredients, ...things].filter((r) => plainRow(r) && r.packs.metric.length > 0);
/** Pack sizes in thousandths of the buying unit, written out from the table. */
const sizesOf = (r: Ingredient): number[] => r.packs.metric.map((p) => Math.round(Number(p.amount) * (scale(p.unit, r.buyUnit.metric) ?? 1) * 1000));

/** Least that packs can add up to and still cover: every sum reached once, smallest first. Knows nothing of the method under test. */
function leastTotal(sizes: readonly number[], needed: number): number {
  const top = needed + Math.max(...sizes);
  const step = sizes.reduce((a, b) => { let [x, y] = [a, b]; while (y > 0) [x, y] = [y, x % y]; return x; });
  const reached = new Uint8Array(Math.ceil(top / step) + 1);
  reached[0] = 1;
  for (let i = 0; i < reached.length; i += 1) if (reached[i] === 1) for (const s of sizes) if (i + s / step < reached.length) reached[i + s / step] = 1;
  for (let i = Math.ceil(needed / step - 1e-9); i < reached.length; i += 1) if (reached[i] === 1) return i * step;
  throw new Error('nothing covers it');
}

const row = fc.constantFrom(...rows);
const thousandths = (n: number): string => new Big(n).div(1000).toFixed();
const share = { houseFigures: [{ figure: 'buy.extraForFewerPacks', value: 0, why: 'test' }] };
const asks = (r: Ingredient, n: number, more: Readonly<Record<string, unknown>> = {}, held = 0, bought = 0) => {
  const unit = r.buyUnit.metric;
  const [l] = buy([{ ...needOf(r.id, thousandths(n), 'kg'), amount: { amount: new Big(thousandths(n)), unit: unit as 'kg' } }], {
    larder: held === 0 ? [] : [{ ingredient: r.id, amount: { amount: thousandths(held), unit } }],
    shopping: { marks: bought === 0 ? [] : [{ line: r.id, bought: { amount: thousandths(bought), unit } }] }, ...more,
  }).lines;
  if (l === undefined) throw new Error(`no line of ${r.id}`);
  return l;
};
const milli = (b: Big): number => b.times(1000).toNumber();

describe('what is bought of one food or thing', () => {
  it('covers the need with larder and what is bought, by the least its packs can make', () => {
    fc.assert(fc.property(row, fc.integer({ min: 1, max: 40_000 }), fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 0, max: 9000 }), (r, n, held, bought) => {
      const l = asks(r, n, share, held, bought);
      const missing = milli(l.need.amount) - held - bought;
      const there = l.buy.amount.plus(l.larder.amount).plus(l.bought.amount);
      // So little of a food missing beside what is held asks for no pack more (buy.shortWithin, a hundredth of the need); things are counted.
      const isCovered = !things.some((t) => t.id === r.id) && held + bought > 0 && missing > 0 && missing <= milli(l.need.amount) * 0.01;
      expect(there.gte(l.need.amount.times(isCovered ? '0.99' : 1))).toBe(true);
      expect(milli(l.buy.amount)).toBeCloseTo(missing <= 0 || isCovered ? 0 : leastTotal(sizesOf(r), Math.max(1, Math.ceil(missing - 1e-6))), 6);
    }), { numRuns: 1000 });
  });

  it('is never more than one pack above the least, whatever is allowed for fewer packs', () => {
    fc.assert(fc.property(row, fc.integer({ min: 1, max: 40_000 }), fc.integer({ min: 0, max: 15 }), (r, n, percent) => {
      const l = asks(r, n, { houseFigures: [{ figure: 'buy.extraForFewerPacks', value: percent / 100, why: 'test' }] });
      const least = leastTotal(sizesOf(r), Math.max(1, Math.ceil(milli(l.need.amount) - 1e-6)));
      expect(milli(l.buy.amount)).toBeGreaterThanOrEqual(least - 1e-6);
      expect(milli(l.buy.amount) - least).toBeLessThanOrEqual(Math.max(...sizesOf(r)) + 1e-6);
    }), { numRuns: 1000 });
  });

  it('never falls when the need rises, for food of one pack size', () => {
    const single = fc.constantFrom(...rows.filter((r) => r.packs.metric.length === 1));
    fc.assert(fc.property(single, fc.integer({ min: 1, max: 30_000 }), fc.integer({ min: 0, max: 5000 }), (r, n, more) => {
      expect(asks(r, n + more).buy.amount.gte(asks(r, n).buy.amount)).toBe(true);
    }), { numRuns: 1000 });
  });

  it('honours the larder: what the house has is never bought, and a little more of it never buys more', () => {
    fc.assert(fc.property(row, fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 0, max: 3000 }), (r, n, held, more) => {
      expect(asks(r, n, share, held + more).buy.amount.lte(asks(r, n, share, held).buy.amount)).toBe(true);
      const all = asks(r, n, share, Math.ceil(milli(asks(r, n).need.amount)));
      expect([all.buy.amount.toString(), all.state]).toEqual(['0', 'house']);
    }), { numRuns: 1000 });
  });

  it('opens workings that recompute and use what they show', () => {
    fc.assert(fc.property(row, fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 1, max: 99_999 }), (r, n, held, bought, cents) => {
      const l = asks(r, n, { prices: [{ ingredient: r.id, price: (cents / 100).toFixed(2), per: { amount: '1', unit: r.buyUnit.metric } }] }, held, bought);
      const all = [l.buyFigure, ...(l.costFigure === undefined ? [] : [l.costFigure])];
      expect(all.flatMap((f) => faultsOf(f, ruleIds))).toEqual([]);
      expect(all.flatMap((f) => opened(r.id, f)).flatMap(unused)).toEqual([]);
    }), { numRuns: 1000 });
  });
});
