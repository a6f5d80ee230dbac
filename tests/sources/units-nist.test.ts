/** Exact definitions: NIST Handbook 44, Appendix C (2023): the international inch and pound (1959), the US gallon of 231 cubic inches. */
import { Big } from 'big.js';
import { describe, expect, it } from 'vitest';
import { amountOf, baseFactor, convert, kitchenAmount, type UnitId } from '../../shared/measure';

const inchMm = new Big('25.4');
const gallonMl = inchMm.pow(3).times(231).div(1000);

describe('units against their legal definitions', () => {
  it('a US gallon is 231 cubic inches of 25.4 mm: 3785.411784 ml', () => {
    expect(gallonMl.toFixed()).toBe('3785.411784');
    expect(baseFactor('gallon').eq(gallonMl)).toBe(true);
  });

  it.each([['quart', 4], ['pint', 8], ['cup', 16], ['floz', 128], ['tbsp', 256], ['tsp', 768]] as const)('a gallon is %s × %d', (unit, count) => {
    expect(baseFactor(unit).times(count).eq(gallonMl)).toBe(true);
    expect(convert(amountOf(1, 'gallon'), unit).amount.toNumber()).toBe(count);
  });

  it('a pound is 453.59237 g and 16 ounces', () => {
    expect(baseFactor('lb').toFixed()).toBe('453.59237');
    expect(baseFactor('oz').times(16).eq(baseFactor('lb'))).toBe(true);
  });

  it('metric units are powers of ten', () => {
    expect(baseFactor('kg').toFixed()).toBe('1000');
    expect(baseFactor('L').toFixed()).toBe('1000');
  });

  // NIST, household cooking equivalents (rounded there): cup 237 ml, fluid ounce 30 ml, tablespoon 15 ml, teaspoon 4.9 ml (5), pint 473 ml, quart 946 ml.
  it.each([['cup', 237, 0.5], ['floz', 30, 0.5], ['tbsp', 15, 0.5], ['tsp', 4.9, 0.05], ['pint', 473, 0.5], ['quart', 946, 0.5]] as const)(
    'a %s rounds to the %f ml of the household table', (unit, ml, within) => {
      expect(Math.abs(baseFactor(unit).toNumber() - ml)).toBeLessThanOrEqual(within);
    });
});

describe('awkward sizes of a printed cookbook table (TX-MC)', () => {
  it.each([
    ['0.375', 'cup', '¼ cup + 2 tbsp'], ['0.625', 'cup', '½ cup + 2 tbsp'], ['0.875', 'cup', '¾ cup + 2 tbsp'], ['0.125', 'cup', '2 tbsp'], ['1', 'tsp', '1 tsp'],
  ] as const)('%s %s is measured as %s', (value, unit: UnitId, text) => {
    expect(kitchenAmount(amountOf(value, unit), 'us').map((p) => `${p.text} ${p.unit}`).join(' + ')).toBe(text);
  });
  it('a third of a tablespoon is a teaspoon, two thirds two', () => {
    expect(kitchenAmount({ amount: new Big(1).div(3), unit: 'tbsp' }, 'us')).toEqual([{ text: '1', unit: 'tsp' }]);
    expect(kitchenAmount({ amount: new Big(2).div(3), unit: 'tbsp' }, 'us')).toEqual([{ text: '2', unit: 'tsp' }]);
  });
});
