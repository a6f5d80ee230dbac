import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountFrom, amountOf, amountText, compareAmounts, convert, convertFood, dimensionOf, gramsOfUnit, isUnitId, plain, scaleAmount, unitIds,
  type UnitId,
} from '../../../shared/measure';

const of = (dimension: string) => unitIds.filter((u) => dimensionOf(u) === dimension);
const value = fc.integer({ min: 0, max: 10_000_000 }).map((n) => new Big(n).div(1000));
const pair = (dimension: string) => fc.tuple(fc.constantFrom(...of(dimension)), fc.constantFrom(...of(dimension)));

describe('converting inside a dimension', () => {
  it.each(['mass', 'volume'])('there and back is exact: %s', (dimension) => {
    fc.assert(fc.property(value, pair(dimension), (v, [a, b]) => {
      const back = convert(convert({ amount: v, unit: a }, b), a);
      expect(amountText(back).amount).toBe(plain(v));
    }));
  });

  it('is refused across dimensions and between counts', () => {
    expect(() => convert(amountOf(1, 'g'), 'ml')).toThrow('without a density');
    expect(() => convert(amountOf(1, 'piece'), 'bunch')).toThrow(RangeError);
    expect(convert(amountOf(3, 'clove'), 'clove').amount.toString()).toBe('3');
  });

  it('compares and multiplies across units', () => {
    expect(compareAmounts(amountOf(16, 'tbsp'), amountOf(1, 'cup'))).toBe(0);
    expect(compareAmounts(amountOf(1, 'lb'), amountOf(453, 'g'))).toBeGreaterThan(0);
    expect(scaleAmount(amountOf('0.1', 'L'), 3).amount.toString()).toBe('0.3');
  });
});

describe('the file form', () => {
  it('is plain decimals, never an exponent, and reads back', () => {
    expect(amountText(amountOf('0.0000001', 'kg')).amount).toBe('0.0000001');
    expect(amountText(amountOf('1e20', 'g')).amount).toBe('100000000000000000000');
    expect(amountText(amountOf('2.500', 'g')).amount).toBe('2.5');
    fc.assert(fc.property(value, fc.constantFrom(...unitIds), (v, unit) => {
      const again = amountFrom(amountText({ amount: v, unit }));
      expect(again.amount.eq(v) && again.unit === unit).toBe(true);
    }));
  });
});

describe('converting a food', () => {
  const weights = { gramsPerMl: 0.528, gramsPer: { piece: 110, clove: 3 } };

  it('goes by density between mass and volume, by weight between things', () => {
    expect(convertFood(amountOf(100, 'ml'), 'g', weights)?.amount.toString()).toBe('52.8');
    expect(convertFood(amountOf('52.8', 'g'), 'L', weights)?.amount.toString()).toBe('0.1');
    expect(convertFood(amountOf(2, 'piece'), 'kg', weights)?.amount.toString()).toBe('0.22');
    expect(convertFood(amountOf(11, 'g'), 'piece', weights)?.amount.toString()).toBe('0.1');
    expect(convertFood(amountOf(110, 'clove'), 'piece', weights)?.amount.toString()).toBe('3');
  });

  it('knows what it does not know', () => {
    expect(convertFood(amountOf(1, 'bunch'), 'g', weights)).toBeNull();
    expect(convertFood(amountOf(1, 'cup'), 'g', { gramsPerMl: null, gramsPer: {} })).toBeNull();
    expect(convertFood(amountOf(1, 'g'), 'piece', { gramsPerMl: 1, gramsPer: { piece: 0 } })).toBeNull();
    expect(gramsOfUnit('lb', weights)?.toString()).toBe('453.59237');
  });

  it('there and back is exact, whatever the density', () => {
    const density = fc.integer({ min: 50, max: 2000 }).map((n) => n / 1000);
    fc.assert(fc.property(value, density, fc.constantFrom(...of('mass')), fc.constantFrom(...of('volume')), (v, d, mass, volume) => {
      const food = { gramsPerMl: d, gramsPer: {} };
      const there = convertFood({ amount: v, unit: mass }, volume, food);
      const back = there === null ? null : convertFood(there, mass, food);
      expect(back === null ? 'not told' : amountText(back).amount).toBe(plain(v));
    }));
  });

  it('is not told by a density of nothing', () => {
    expect(convertFood(amountOf(1, 'g'), 'ml', { gramsPerMl: 0, gramsPer: {} })).toBeNull();
  });
});

describe('unit ids', () => {
  it('are told from other words', () => {
    const ids: readonly string[] = unitIds;
    expect(ids.every(isUnitId)).toBe(true);
    expect(['cups', '', 'constructor', 'toString', 'KG'].some(isUnitId)).toBe(false);
    const narrowed: UnitId[] = ['g', 'stone'].filter(isUnitId);
    expect(narrowed).toEqual(['g']);
  });
});
