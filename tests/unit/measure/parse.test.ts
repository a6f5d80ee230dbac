import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMoney, fractionText, moneyText, parseAmount } from '../../../shared/measure';

describe('reading amounts as cooks write them', () => {
  it.each([
    ['2.5', 2.5], ['2,5', 2.5], ['0', 0], [' 7 ', 7], ['1½', 1.5], ['½', 0.5], ['1 ½', 1.5], ['1 1/2', 1.5], ['1-1/2', 1.5], ['3/4', 0.75], ['10 3/8', 10.375], ['1⁄4', 0.25], ['2⅞', 2.875],
  ])('%j is %d', (text, value) => expect(parseAmount(text)?.toNumber()).toBe(value));

  it.each(['', 'two', '-1', '1/0', '1..2', '1½ cups', '1e3', '1/2/3', '½½', '1234567890123', '.5', '5.', 'NaN'])('%j is no number', (text) => expect(parseAmount(text)).toBeNull());

  it('keeps a third to 30 decimals', () => expect(parseAmount('1/3')?.times(3).minus(1).abs().lt('1e-29')).toBe(true));

  it('reads back every fraction it writes', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 800 }), (eighths) => {
      const value = new Big(eighths).div(8);
      expect(parseAmount(fractionText(value))?.eq(value)).toBe(true);
    }));
  });

  it('agrees with plain decimals', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 1_000_000_000 }), fc.integer({ min: 0, max: 8 }), (n, places) => {
      const text = new Big(n).div(10 ** places).toFixed();
      expect(parseAmount(text)?.toFixed()).toBe(text);
    }));
  });
});

describe('money', () => {
  it.each([['1.005', '1.01'], ['2', '2.00'], ['0.004', '0.00'], ['1234567.894', '1234567.89']])('%s is written %s', (value, text) => expect(moneyText(new Big(value))).toBe(text));
  it('adds exactly where floating point would not', () => expect(addMoney('0.10', '0.20', '0.30')).toBe('0.60'));
  it('of nothing is nothing', () => expect(addMoney()).toBe('0.00'));
});
