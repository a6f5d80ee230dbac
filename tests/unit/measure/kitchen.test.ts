import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountOf, convert, fractionText, kitchenAmount, parseAmount, unitIds, type Amount, type UnitId } from '../../../shared/measure';

/** What the parts measure together, in the unit of `a`; read back from their text. */
function measured(a: Amount, system: 'metric' | 'us'): Big {
  return kitchenAmount(a, system).reduce((sum, p) => {
    const value = parseAmount(p.text);
    if (value === null) throw new Error(`cannot read "${p.text}"`);
    return sum.plus(convert({ amount: value, unit: p.unit }, a.unit).amount);
  }, new Big(0));
}
const off = (a: Amount, system: 'metric' | 'us') => measured(a, system).minus(a.amount).abs().div(a.amount).toNumber();
const text = (value: string, unit: UnitId, system: 'metric' | 'us') => kitchenAmount(amountOf(value, unit), system).map((p) => `${p.text} ${p.unit}`).join(' + ');
/** Amounts over five powers of ten, evenly on a logarithmic scale. */
const amount = (least: number) => fc.double({ min: 0, max: 5, noNaN: true }).map((power) => new Big((least * 10 ** power).toFixed(4)));

describe('kitchen amounts', () => {
  it.each([
    ['g', 'metric', 1, 30], ['ml', 'metric', 1, 30], ['tsp', 'us', 0.5, 6], ['oz', 'us', 0.5, 2],
  ] as const)('%s in %s units is off by at most 13 %%, and by at most 7 %% for cooking amounts', (unit, system, least, from) => {
    fc.assert(fc.property(amount(least), (value) => {
      const error = off({ amount: value, unit }, system);
      expect(error).toBeLessThanOrEqual(0.13);
      expect(value.lt(from) || error <= 0.07).toBe(true);
    }), { numRuns: 1000 });
  });

  it('measures what can be measured exactly, exactly', () => {
    for (const cup of ['0.25', '0.5', '0.75', '1', '1.25', '1.5', '1.75', '2', '2.25', '3.5', '8', '10']) expect(off(amountOf(cup, 'cup'), 'us')).toBe(0);
    for (const tsp of ['0.125', '0.25', '0.5', '0.75', '1', '1.5', '2', '3', '4', '4.5', '6']) expect(off(amountOf(tsp, 'tsp'), 'us')).toBe(0);
    for (const g of ['0.5', '5', '12', '75', '250', '1000', '2500', '12000']) expect(off(amountOf(g, 'g'), 'metric')).toBe(0);
  });

  it.each([
    ['1.5', 'cup', '1½ cup'], ['2', 'tbsp', '2 tbsp'], ['0.25', 'tsp', '¼ tsp'], ['0.375', 'cup', '¼ cup + 2 tbsp'], ['0.625', 'cup', '½ cup + 2 tbsp'],
    ['0.875', 'cup', '¾ cup + 2 tbsp'], ['48', 'tsp', '1 cup'], ['3', 'tsp', '1 tbsp'], ['4', 'tsp', '1 tbsp + 1 tsp'], ['4.5', 'tsp', '1½ tbsp'],
    ['2', 'quart', '2 quart'], ['4', 'quart', '1 gallon'], ['5', 'quart', '1 gallon + 1 quart'], ['20', 'lb', '20 lb'], ['2.5', 'lb', '2 lb + 8 oz'],
    ['6.3', 'lb', '6¼ lb'], ['3.3', 'oz', '3¼ oz'],
    // From two quarts on eighths of a quart, from four quarters, from eight whole quarts, from ten gallons half gallons.
    ['2.1', 'quart', '2 1\u20448 quart'], ['3.06', 'quart', '3 quart'], ['3.07', 'quart', '3 1\u20448 quart'],
    ['4.25', 'quart', '1 gallon + ¼ quart'], ['5.6', 'quart', '1 gallon + 1½ quart'], ['7.9', 'quart', '2 gallon'],
    ['9', 'quart', '2 gallon + 1 quart'], ['9.4', 'quart', '2 gallon + 1 quart'], ['9.6', 'quart', '2 gallon + 2 quart'], ['39', 'quart', '9 gallon + 3 quart'],
    ['40.9', 'quart', '10 gallon'], ['41.1', 'quart', '10 gallon + 2 quart'],
  ] as const)('%s %s in US units: %s', (value, unit, expected) => expect(text(value, unit, 'us')).toBe(expected));

  it('keeps a third of a cup', () => {
    expect(kitchenAmount({ amount: new Big(1).div(3), unit: 'cup' }, 'us')).toEqual([{ text: '1⁄3', unit: 'cup' }]);
    expect(kitchenAmount({ amount: new Big(8).div(3), unit: 'cup' }, 'us')).toEqual([{ text: '2 2⁄3', unit: 'cup' }]);
  });

  it.each([
    ['1.23', 'g', '1.2 g'], ['7.3', 'g', '7.5 g'], ['33', 'g', '33 g'], ['77', 'g', '75 g'], ['774', 'g', '770 g'], ['998', 'g', '1 kg'], ['1.234', 'kg', '1.25 kg'], ['12.34', 'kg', '12.3 kg'],
    ['1', 'cup', '240 ml'], ['1', 'L', '1 L'], ['7.8', 'L', '7.8 L'], ['1', 'lb', '450 g'], ['1', 'tsp', '5 ml'],
  ] as const)('%s %s in metric units: %s', (value, unit, expected) => expect(text(value, unit, 'metric')).toBe(expected));

  it('never shows nothing for something', () => {
    for (const unit of unitIds) {
      for (const system of ['metric', 'us'] as const) {
        expect(kitchenAmount(amountOf('0.0001', unit), system)[0]?.text).not.toBe('0');
        expect(kitchenAmount(amountOf('0', unit), system)[0]?.text).toBe('0');
      }
    }
  });

  it.each([['3.2', '3¼ piece'], ['0.5', '½ piece'], ['12.4', '12 piece'], ['0.05', '¼ piece']] as const)('counts %s pieces as %s', (value, expected) => expect(text(value, 'piece', 'metric')).toBe(expected));

  it('writes fractions a cook knows, and decimals otherwise', () => {
    expect(['0.5', '1.25', '2', '0.125', '3.875', '0.1', '0'].map((v) => fractionText(new Big(v)))).toEqual(['½', '1¼', '2', '1⁄8', '3 7⁄8', '0.1', '0']);
  });
});
