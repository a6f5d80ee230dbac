/** Baker's percentages: each weight over the weight of the flour. A baking school's example (BAKER), and the biscuits printed for two sizes (USDA-BPB). */
import { describe, expect, it } from 'vitest';
import { recipeSchema, type Recipe } from '../../shared/event';
import { ratioRows, scaleRecipe, usualBase } from '../../shared/menu';
import data from './data/recipes-checks.json';
import { readPrinted } from './printed-amounts';

const dough = (lines: Readonly<Record<string, string>>): Recipe => recipeSchema.parse({
  id: 'dough', name: 'Dough', role: 'bread', yield: { amount: { amount: '1', unit: 'kg' }, portions: 10 },
  ingredients: Object.entries(lines).map(([ingredient, grams]) => ({ ingredient, amount: { amount: grams, unit: 'g' } })),
});
const percents = (recipe: Recipe, base: string): Record<string, number | undefined> => Object.fromEntries(ratioRows(recipe, base).map((r) => [r.ingredient, r.percent?.value]));

describe("baker's percentages", () => {
  const [school, biscuit] = data.bakers_percentage;

  it('b1 (BAKER): 1,000 g flour, 600 g water, 2 g yeast, 10 g salt: 100, 60, 0.2 and 1 percent, 161.2 in all', () => {
    const { flour_g: flour, parts, percent, total_percent: total } = school ?? {};
    const recipe = dough({ 'wheat-flour-white': String(flour), water: String(parts?.water), yeast: String(parts?.yeast), salt: String(parts?.salt) });
    expect(usualBase(recipe)).toBe('wheat-flour-white');
    const ours = percents(recipe, 'wheat-flour-white');
    expect(ours).toEqual({ 'wheat-flour-white': percent?.flour, water: percent?.water, yeast: percent?.yeast, salt: percent?.salt });
    expect(Object.values(ours).reduce<number>((sum, p) => sum + (p ?? 0), 0)).toBeCloseTo(total ?? 0, 9);
    expect(percents(scaleRecipe(recipe, 3.48), 'wheat-flour-white')['water']).toBeCloseTo(60, 9);
  });

  it('b2 (USDA-BPB, from the printed weights): milk powder 16.1, baking powder 2.4, sour cream 51.6 percent of the flour', () => {
    const rows = data.two_column_recipes.find((r) => r.id === 'r09')?.ingredients ?? [];
    const grams = (name: string): string => {
      const row: unknown = rows.find((r) => r.name === name);
      const column = typeof row === 'object' && row !== null && '25' in row ? row['25'] : null;
      const weight = typeof column === 'object' && column !== null && 'weight' in column ? readPrinted(column.weight) : null;
      if (weight === null) throw new Error(`no weight for ${name}`);
      return weight.amount.times(weight.unit === 'lb' ? '453.59237' : '28.349523125').toFixed(9);
    };
    const ours = percents(dough({
      'wheat-flour-whole': grams('Whole-wheat flour'), 'milk-powder': grams('Milk powder, non-fat instant'), 'baking-powder': grams('Baking powder'), 'sour-cream': grams('Sour cream'),
    }), 'wheat-flour-whole');
    const { milk_powder: milk, baking_powder: powder, sour_cream: cream } = biscuit?.percent ?? {};
    // Printed to one decimal.
    expect(Math.round((ours['milk-powder'] ?? 0) * 10) / 10).toBe(milk);
    expect(Math.round((ours['baking-powder'] ?? 0) * 10) / 10).toBe(powder);
    expect(Math.round((ours['sour-cream'] ?? 0) * 10) / 10).toBe(cream);
  });
});
