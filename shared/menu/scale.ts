import { Big } from 'big.js';
import type { IngredientLine, Recipe } from '../event';
import { plain, type Amount } from '../measure';

/** Batches of the recipe that a `perBatch` line already holds; 1 as written. Kept in the line, so that scaling twice is scaling once. */
function batchesIn(line: IngredientLine): Big {
  const kept = 'batches' in line.scaling ? line.scaling['batches'] : undefined;
  return typeof kept === 'string' ? new Big(kept) : new Big(1);
}

const wholeBatches = (batches: Big): Big => batches.minus('0.000000001').round(0, Big.roundUp);

/** `factor` to the power `exponent` (0.3-1); exact for 1. */
function damped(factor: Big, exponent: number): Big {
  if (factor.eq(1) || exponent === 1) return factor;
  return new Big((factor.toNumber() ** exponent).toPrecision(15));
}

/**
 * An ingredient's exact amount in a recipe multiplied by `factor` (0 or more): linear in proportion, fixed unchanged, perBatch once for each
 * begun batch, damped with the factor to a power below one. Nothing is needed for a factor of 0.
 */
export function scaleLine(line: IngredientLine, factor: Big): Amount {
  const amount = new Big(line.amount.amount);
  const { unit } = line.amount;
  if (factor.lte(0)) return { amount: new Big(0), unit };
  const { scaling } = line;
  if (scaling.kind === 'fixed') return { amount, unit };
  if (scaling.kind === 'damped') return { amount: amount.times(damped(factor, scaling.exponent)), unit };
  if (scaling.kind === 'linear') return { amount: amount.times(factor), unit };
  const before = batchesIn(line);
  return { amount: amount.div(wholeBatches(before)).times(wholeBatches(before.times(factor))), unit };
}

function scaledLine(line: IngredientLine, factor: Big): IngredientLine {
  const amount = { ...line.amount, amount: plain(scaleLine(line, factor).amount) };
  if (line.scaling.kind !== 'perBatch') return { ...line, amount };
  return { ...line, amount, scaling: { ...line.scaling, batches: plain(batchesIn(line).times(factor)) } };
}

/**
 * A recipe for `factor` times the yield, to 12 decimals. Steps keep their minutes per kilogram and per batch: boil-off and cooking time follow
 * power and time, not size. `scaleRecipe(r, 1)` is `r`; scaling by a and then b is scaling by a × b.
 * @param factor above 0. @throws RangeError otherwise.
 */
export function scaleRecipe(recipe: Recipe, factor: Big | number | string): Recipe {
  const by = new Big(factor);
  if (by.lte(0)) throw new RangeError(`a recipe is scaled by a factor above 0, got ${by.toString()}`);
  if (by.eq(1)) return recipe;
  const { amount, portions } = recipe.yield;
  return {
    ...recipe,
    yield: { ...recipe.yield, amount: { ...amount, amount: plain(new Big(amount.amount).times(by)) }, portions: portions * by.toNumber() },
    ingredients: recipe.ingredients.map((line) => scaledLine(line, by)),
  };
}
