import type { IngredientLine } from '../../event';
import { amountFrom, convert, dimensionOf, type Amount } from '../../measure';
import { ingredient, type CountUnit } from '../../reference';

const countUnits: readonly CountUnit[] = ['piece', 'bunch', 'clove', 'slice', 'pinch'];

/** Grams of an amount of an ingredient; millilitres count as grams when no density is known, and a piece of unknown weight counts nothing. */
export function gramsOf(id: string, amount: Amount): number {
  const row = ingredient(id);
  if (dimensionOf(amount.unit) === 'mass') return Number(convert(amount, 'g').amount);
  if (dimensionOf(amount.unit) === 'volume') return Number(convert(amount, 'ml').amount) * (row?.gramsPerMl ?? 1);
  const unit = countUnits.find((u) => u === amount.unit);
  return Number(amount.amount) * (unit === undefined ? 0 : row?.gramsPer[unit] ?? 0);
}

/** Grams of a recipe line. */
export const gramsOfLine = (line: IngredientLine): number => gramsOf(line.ingredient, amountFrom(line.amount));
