import type { Recipe } from '../../../../shared/event';
import { dimensionOf } from '../../../../shared/measure';
import { rolePortion } from '../../../../shared/reference';

/** What one adult is given of a dish of this place in the meal, when nothing else is said; `n` is null when the recipe's own portion counts. */
export function roleMeans({ role, brewing, yield: made }: Pick<Recipe, 'role' | 'brewing' | 'yield'>): { readonly n: number | null; readonly unit: 'piece' | 'g' | 'ml' } {
  if (brewing !== undefined) return { n: brewing.cupMl, unit: 'ml' };
  const row = rolePortion(role);
  const dimension = dimensionOf(made.amount.unit);
  if (dimension === 'mass') return { n: row.g?.value ?? null, unit: 'g' };
  if (dimension === 'volume') return { n: row.ml?.value ?? null, unit: 'ml' };
  return { n: made.amount.unit === 'piece' ? (row.piece?.value ?? null) : null, unit: 'piece' };
}
