import type { Origin } from '../../shared/figure';
import { ingredient, type IngredientFigure } from '../../shared/reference';

/** The figure of a food that an input comes from, by its row (`basmati-rice.density`); null for any other input. */
export function foodFigure(origin: Origin): { readonly of: string; readonly figure: IngredientFigure } | null {
  if (origin.kind !== 'table') return null;
  const [id = '', of = ''] = origin.row.split('.');
  const figure = Object.entries(ingredient(id)?.figures ?? {}).find(([key]) => key === of)?.[1];
  return figure === undefined ? null : { of, figure };
}
