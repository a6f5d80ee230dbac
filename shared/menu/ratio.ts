import { Big } from 'big.js';
import type { IngredientLine, Recipe } from '../event';
import { divide, figure, plus, times, worked, workingOf, type Figure } from '../figure';
import { lineTerm, lineWeight, weightOf } from './line-weight';

/** One food of a recipe as a share of the base food. */
export interface RatioRow {
  /** Id of the food; its lines are added up. */
  readonly ingredient: string;
  /** Grams of all its lines; null when one of them cannot be weighed. */
  readonly grams: Figure | null;
  /** Percent of the weight of the base, which is 100; null when either cannot be weighed. */
  readonly percent: Figure | null;
}

type Lines = Pick<Recipe, 'id' | 'ingredients'>;

/** Lines by food, in the order of their first. */
function byFood({ ingredients }: Lines): ReadonlyMap<string, readonly IngredientLine[]> {
  const found = new Map<string, IngredientLine[]>();
  for (const line of ingredients) found.set(line.ingredient, [...(found.get(line.ingredient) ?? []), line]);
  return found;
}

function foodWeight(recipe: Lines, lines: readonly IngredientLine[]): Figure | null {
  const weights = lines.flatMap((line) => lineWeight(recipe, line) ?? []);
  const [only] = weights;
  if (weights.length !== lines.length || only === undefined) return null;
  if (weights.length === 1) return only;
  const sum = lines.reduce((all, line) => all.plus(weightOf(line) ?? 0), new Big(0)).toNumber();
  return figure(sum, 'g', () => {
    const terms = lines.flatMap((line, at) => { const weight = weights[at]; return weight === undefined ? [] : [lineTerm(`line${at + 1}`, line, weight)]; });
    return workingOf('menu.foodWeight', terms, plus(...terms.map((term) => term.key)));
  });
}

/** Id of the food others are told as a share of: the heaviest that is not water. Empty for a recipe without ingredients. */
export function usualBase(recipe: Lines): string {
  const weighed = [...byFood(recipe)].map(([food, lines]) => ({ food, grams: foodWeight(recipe, lines)?.value ?? 0 })).filter((one) => one.grams > 0);
  const heaviest = weighed.toSorted((a, b) => b.grams - a.grams);
  return (heaviest.find((one) => one.food !== 'water') ?? heaviest[0])?.food ?? recipe.ingredients[0]?.ingredient ?? '';
}

/** Every food of a recipe in percent of the base by weight, in the recipe's order: baker's percentages, base 100. */
export function ratioRows(recipe: Lines, base: string): readonly RatioRow[] {
  const rows = [...byFood(recipe)].map(([ingredient, lines]) => ({ ingredient, grams: foodWeight(recipe, lines) }));
  const whole = rows.find((row) => row.ingredient === base)?.grams ?? null;
  return rows.map(({ ingredient, grams }) => ({ ingredient, grams, percent: grams === null || whole === null || whole.value <= 0 ? null : percentOf(grams, whole) }));
}

const percentOf = (grams: Figure, whole: Figure): Figure => figure((100 * grams.value) / whole.value, 'percent', () => workingOf('menu.ratio', [
  worked('grams', { word: 'recipe.term.weight' }, grams), worked('base', { word: 'recipe.term.baseWeight' }, whole),
], divide(times(100, 'grams'), 'base')));
