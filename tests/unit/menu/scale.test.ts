import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeSchema, type Recipe } from '../../../shared/event';
import { scaleLine, scaleRecipe } from '../../../shared/menu';

const line = (amount: string, scaling: unknown) => ({ ingredient: 'salt', amount: { amount, unit: 'g' }, scaling });
const recipe: Recipe = recipeSchema.parse({
  id: 'r', name: 'R', role: 'pulse', yield: { amount: { amount: '2.5', unit: 'kg' }, portions: 12 },
  ingredients: [line('100', { kind: 'linear' }), line('7', { kind: 'fixed' }), line('40', { kind: 'perBatch' }), line('12.5', { kind: 'damped', exponent: 0.8 })],
  steps: [{ id: 's', name: 'Boil', active: { fixed: 5, perKg: 2, perBatch: 0 } }],
});
const amounts = (r: Recipe) => r.ingredients.map((l) => Number(l.amount.amount));
const factor = fc.integer({ min: 1, max: 4000 }).map((n) => n / 100);

describe('scaling a recipe', () => {
  it('by 1 is the recipe itself', () => expect(scaleRecipe(recipe, 1)).toEqual(recipe));

  it('linear in proportion, fixed unchanged, once per begun batch, damped to a power', () => {
    const big = scaleRecipe(recipe, '2.5');
    expect(big.yield).toEqual({ amount: { amount: '6.25', unit: 'kg' }, portions: 30 });
    expect(big.ingredients.slice(0, 3).map((l) => l.amount.amount)).toEqual(['250', '7', '120']);
    expect(Number(big.ingredients[3]?.amount.amount)).toBeCloseTo(12.5 * 2.5 ** 0.8, 9);
    expect(big.steps).toEqual(recipe.steps);
  });

  it('by a and then by b is by a × b', () => {
    fc.assert(fc.property(factor, factor, (a, b) => {
      const twice = scaleRecipe(scaleRecipe(recipe, a), b);
      const once = scaleRecipe(recipe, new Big(a).times(b));
      amounts(once).forEach((x, i) => expect(amounts(twice)[i]).toBeCloseTo(x, 6 - Math.max(0, Math.ceil(Math.log10(Math.max(1, x))) - 6)));
      expect(Number(twice.yield.amount.amount)).toBeCloseTo(Number(once.yield.amount.amount), 8);
    }));
  });

  it('keeps amounts exact: a third of a recipe made three times is the recipe', () => {
    const third = scaleRecipe(recipe, new Big(1).div(3));
    expect(Number(scaleRecipe(third, 3).ingredients[0]?.amount.amount)).toBeCloseTo(100, 9);
    expect(scaleRecipe(recipe, '0.1').ingredients[0]?.amount.amount).toBe('10');
  });

  it('never needs less for a larger factor', () => {
    fc.assert(fc.property(factor, factor, (a, b) => {
      const [small, large] = a < b ? [a, b] : [b, a];
      for (const l of recipe.ingredients) expect(scaleLine(l, new Big(large)).amount.gte(scaleLine(l, new Big(small)).amount)).toBe(true);
    }));
  });

  it('needs nothing for nothing, and refuses a factor of zero or less', () => {
    for (const l of recipe.ingredients) expect(scaleLine(l, new Big(0)).amount.toString()).toBe('0');
    expect(() => scaleRecipe(recipe, 0)).toThrow(RangeError);
    expect(() => scaleRecipe(recipe, -1)).toThrow('above 0');
  });
});
