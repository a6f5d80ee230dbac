import { describe, expect, it } from 'vitest';
import { inLarder } from '../../../shared/buying/larder';
import { eventSchema } from '../../../shared/event';
import { ingredient } from '../../../shared/reference';
import { adults, menuEvent, recipeOf } from '../menu/make-menu';

const holding = (...amounts: readonly (readonly [string, string])[]) =>
  eventSchema.parse({ ...menuEvent([recipeOf('x', 'grain')], [adults(5)]), larder: amounts.map(([amount, unit]) => ({ ingredient: 'basmati-rice', amount: { amount, unit } })) });
const rice = ingredient('basmati-rice');

describe('what the larder holds', () => {
  it('is never more than it is: what does not come out even is cut at the ninth decimal', () => {
    // 0.1 oz is 2.8349523125 g exactly (definition of the ounce): half way at the tenth decimal.
    expect(inLarder(holding(['0.1', 'oz']), 'basmati-rice', rice, 'g').amount.toString()).toBe('2.834952312');
    // 1 g is 0.00220462262184877... lb: the tenth decimal is an 8.
    expect(inLarder(holding(['1', 'g']), 'basmati-rice', rice, 'lb').amount.toString()).toBe('0.002204622');
    expect(inLarder(holding(['8', 'g']), 'basmati-rice', rice, 'lb').amount.toString()).toBe('0.01763698');
  });
  it('is the sum of its entries, cut once', () => {
    expect(inLarder(holding(['0.1', 'oz'], ['0.1', 'oz']), 'basmati-rice', rice, 'g').amount.toString()).toBe('5.669904625');
    expect(inLarder(holding(['1', 'kg'], ['250', 'g'], ['2', 'piece']), 'basmati-rice', rice, 'kg').amount.toString()).toBe('1.25');
  });
});
