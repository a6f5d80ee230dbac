/**
 * Worked examples of scaling and rounding, as printed: armed forces' general information on standard recipes (AFRS-A1), a navy manual's volume
 * adjustment (NAV14163).
 */
import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeSchema } from '../../shared/event';
import { amountOf, convert, fullMeasure, type Amount, type KitchenPart, type UnitId } from '../../shared/measure';
import { scaleRecipe } from '../../shared/menu';
import data from './data/recipes-checks.json';
import { readPrinted } from './printed-amounts';

const example = (id: string) => {
  const found = data.working_factor_examples.find((w) => w.id === id);
  if (found === undefined) throw new Error(`no example ${id}`);
  return found;
};
const scaled = (amount: number, unit: UnitId, factor: number): Amount => {
  const recipe = recipeSchema.parse({
    id: 'r', name: 'R', role: 'plain', yield: { amount: { amount: '100', unit: 'piece' }, portions: 100 }, ingredients: [{ ingredient: 'salt', amount: { amount: String(amount), unit } }],
  });
  return amountOf(scaleRecipe(recipe, factor).ingredients[0]?.amount.amount ?? '0', unit);
};
const printed: Readonly<Partial<Record<UnitId, string>>> = { gallon: 'gal', quart: 'qt', pint: 'pt' };
/** Parts as the sources print them: "4 lb 5 1/2 oz". */
const asPrinted = (parts: readonly KitchenPart[]): string =>
  parts.map((p) => `${p.text.replace('½', ' 1/2').replace('¼', ' 1/4').replace('¾', ' 3/4').trim()} ${printed[p.unit] ?? p.unit}`).join(' ');

describe('working factors', () => {
  it('w1 (AFRS-A1): 1.25 lb a hundred, 348 portions: 4.35 lb, measured as 4 lb 5 1/2 oz', () => {
    const { input, expected } = example('w1');
    const factor = (input.portions ?? 0) / 100;
    expect(factor).toBe(expected.factor);
    const amount = scaled(input.recipe_lb ?? 0, 'lb', factor);
    expect(amount.amount.toNumber()).toBe(expected.lb);
    expect(asPrinted(fullMeasure(amount))).toBe(expected.rounded);
  });

  it('w2 (NAV14163): 6 gal a hundred, 333 portions: 19.98 gal, down to 2 3/4 tsp', () => {
    const { input, expected } = example('w2');
    const amount = scaled(input.recipe_gal ?? 0, 'gallon', (input.portions ?? 0) / 100);
    expect(amount.amount.toNumber()).toBe(expected.gal_decimal);
    expect(asPrinted(fullMeasure(amount))).toBe(expected.rounded);
  });

  it('w3 (AFRS-A1): 102 lb in hand, 30 lb a hundred: a factor of 3.4, which uses exactly what is there', () => {
    const { input, expected } = example('w3');
    const factor = (input.have_lb ?? 0) / (input.per100_lb ?? 1);
    expect(factor).toBe(expected.factor);
    expect(scaled(input.per100_lb ?? 0, 'lb', factor).amount.toNumber()).toBe(input.have_lb);
  });
});

describe('decimal ounces (AFRS-A1)', () => {
  // .00-.12 to 0, .13-.37 to a quarter, .38-.62 to a half, .63-.87 to three quarters, .88-.99 to the next ounce.
  it.each([['5.12', '5 oz'], ['5.13', '5 1/4 oz'], ['5.37', '5 1/4 oz'], ['5.38', '5 1/2 oz'], ['5.62', '5 1/2 oz'], ['5.63', '5 3/4 oz'], ['5.87', '5 3/4 oz'], ['5.88', '6 oz'], ['15.9', '1 lb']])(
    '%s oz is %s', (ounces, text) => expect(asPrinted(fullMeasure(amountOf(ounces, 'oz')))).toBe(text));

  it('no amount is off by more than an eighth of the smallest unit, and the parts add up to one reading', () => {
    fc.assert(fc.property(fc.double({ min: 0.2, max: 90_000, noNaN: true }), fc.constantFrom<UnitId>('oz', 'tsp'), (n, unit) => {
      const amount = amountOf(new Big(n.toFixed(6)), unit);
      const back = readPrinted(asPrinted(fullMeasure(amount)));
      if (back === null) throw new Error('cannot be read back');
      expect(convert(back, unit).amount.minus(amount.amount).abs().toNumber()).toBeLessThanOrEqual(0.125 + 1e-9);
    }), { numRuns: 1000 });
  });
});
