import { describe, expect, it } from 'vitest';
import { readAmount } from '../../../shared/exchange';
import { unitIds } from '../../../shared/measure';

describe('an amount typed into a field', () => {
  it.each([
    ['2.4 kg', '2.4', 'kg'], ['2,4kg', '2.4', 'kg'], ['500g', '500', 'g'], ['1½ cups', '1.5', 'cup'], ['1 1/2 tsp', '1.5', 'tsp'], ['3/4 cup', '0.75', 'cup'],
    ['2 dl', '200', 'ml'], ['3 cloves', '3', 'clove'], ['a', null, null], ['1 dozen', '12', 'piece'], ['2 bunches', '2', 'bunch'], ['2 fl oz', '2', 'floz'],
    ['1 lb 4 oz', '1.25', 'lb'], ['2 metric cups', '2', 'metricCup'], ['4 pieces', '4', 'piece'], ['  30   g ', '30', 'g'], ['2 T', '2', 'tbsp'], ['2 t', '2', 'tsp'],
  ] as const)('%s', (text, amount, unit) => {
    expect(readAmount(text)).toEqual(amount === null ? null : { amount, unit });
  });

  it('takes a bare number in the unit given, and none without', () => {
    expect(readAmount('3', 'piece')).toEqual({ amount: '3', unit: 'piece' });
    expect(readAmount('½', 'kg')).toEqual({ amount: '0.5', unit: 'kg' });
    expect(readAmount('3')).toBeNull();
  });

  it.each(['', 'kg', '1-2 kg', '2 to 3 cups', '2 kg onions', '-2 kg', '2 cans', '1/0 cup', '1e3 g', '9999999999999 g', `${'1'.repeat(80)} g`, '2 kg 3 pieces'])('is none: %s', (text) => {
    expect(readAmount(text, 'piece')).toBeNull();
  });

  it('reads every unit back by its id or its words', () => {
    const words: Readonly<Record<string, string>> = { floz: 'fl oz', metricCup: 'metric cup', metricTbsp: 'metric tbsp', metricTsp: 'metric tsp' };
    for (const unit of unitIds) expect(readAmount(`2 ${words[unit] ?? unit}`), unit).toEqual({ amount: '2', unit });
  });
});
