import { Big } from 'big.js';
import { convert, type Amount } from './amount';
import { baseFactor, dimensionOf, type UnitId } from './units';

/** What turns the measures of one food into each other. */
export interface FoodWeights {
  /** Grams per millilitre as measured in a kitchen; null when it is never measured by volume. */
  readonly gramsPerMl: number | null;
  /** Grams of one counted thing, by unit id (`piece`, `bunch`, `clove`, `slice`, `pinch`). */
  readonly gramsPer: Readonly<Partial<Record<string, number>>>;
}

/** Grams of one unit of a food; null when the table does not tell. */
export function gramsOfUnit(unit: UnitId, weights: FoodWeights): Big | null {
  const dimension = dimensionOf(unit);
  if (dimension === 'mass') return baseFactor(unit);
  if (dimension === 'volume') return weights.gramsPerMl === null ? null : baseFactor(unit).times(weights.gramsPerMl);
  const grams = weights.gramsPer[unit];
  return grams === undefined ? null : new Big(grams);
}

/**
 * An amount of a food in another unit, across mass, volume and counted things: amount × grams of one unit ÷ grams of the other.
 * Null when the weights do not tell. Exact to 30 decimals.
 */
export function convertFood(a: Amount, unit: UnitId, weights: FoodWeights): Amount | null {
  if (a.unit === unit) return a;
  const dimension = dimensionOf(unit);
  if (dimension === dimensionOf(a.unit) && dimension !== 'count') return convert(a, unit);
  const from = gramsOfUnit(a.unit, weights);
  const to = gramsOfUnit(unit, weights);
  return from === null || to === null || to.lte(0) ? null : { amount: a.amount.times(from).div(to), unit };
}
