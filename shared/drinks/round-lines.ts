import { Big } from 'big.js';
import type { Brewing } from '../event';
import { amountOf, convert, dimensionOf, type Amount } from '../measure';
import { scaleLine, type DishPlan } from '../menu';

/** An ingredient of a round. */
export interface RoundLine {
  readonly ingredient: string;
  readonly amount: Amount;
}

/** The tap's ingredient id; what goes in follows from the served litres, not from the recipe's line. */
const water = 'water';

/** Litres the recipe makes: its yield when it is a volume, else portions × cup. */
export function yieldLitres(dish: DishPlan, brewing: Brewing): number {
  const { amount, portions } = dish.recipe.yield;
  const litres = dimensionOf(amount.unit) === 'volume' ? convert(amountOf(amount.amount, amount.unit), 'L').amount.toNumber() : 0;
  return litres > 0 ? litres : (portions * brewing.cupMl) / 1000;
}

/** The recipe's lines for so many litres served, without water and without what is dosed on the liquid. */
export function linesOf(dish: DishPlan, brewing: Brewing, litres: number): RoundLine[] {
  const factor = new Big(litres).div(yieldLitres(dish, brewing));
  return dish.recipe.ingredients
    .filter((l) => l.ingredient !== water && !(isDosed(brewing) && l.ingredient === brewing.doseIngredient))
    .map((l) => ({ ingredient: l.ingredient, amount: scaleLine(l, factor) }));
}

/** Litres of the lines given by volume, milk and juices: they take the place of water. */
export const otherLiquids = (lines: readonly RoundLine[]): number =>
  lines.filter((l) => dimensionOf(l.amount.unit) === 'volume').reduce((sum, l) => sum + convert(l.amount, 'L').amount.toNumber(), 0);

const isDosed = (brewing: Brewing): boolean => brewing.doseIngredient !== undefined && brewing.doseGPerL > 0;

/** All ingredients of a round: water to the millilitre, leaf or grounds by the litre of liquid to the tenth of a gram, the rest in proportion. */
export function ingredientsOf(dish: DishPlan, brewing: Brewing, litres: number, waterLitres: number): RoundLine[] {
  const lines = linesOf(dish, brewing, litres);
  const dosed = brewing.doseIngredient;
  const grams = Math.round((waterLitres + otherLiquids(lines)) * brewing.doseGPerL * 10) / 10;
  return [
    { ingredient: water, amount: amountOf(Math.round(waterLitres * 1000) / 1000, 'L') },
    ...(dosed !== undefined && isDosed(brewing) ? [{ ingredient: dosed, amount: amountOf(grams, 'g') }] : []),
    ...lines,
  ].filter((l) => l.amount.amount.gt(0));
}
