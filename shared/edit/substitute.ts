import { putBack, standIns, swapped } from '../buying';
import type { Event } from '../event';
import { ingredient, substitutions } from '../reference';
import { settled } from './check';
import type { EditResult } from './types';

const nameOf = (id: string): string => ingredient(id)?.name ?? id;

/** Puts one food in place of another in the dishes of the menu and in the pans. @param id id of a row of `substitutions`. */
export function substitute(event: Event, id: string): EditResult {
  const row = substitutions.find((s) => s.id === id);
  const next = row === undefined ? null : swapped(event, row);
  if (row === undefined || next === null) return { problem: { id: 'buying.edit.noSwap' }, path: 'recipes' };
  return settled(next, { id: 'buying.edit.swap', params: { from: nameOf(row.from), to: nameOf(row.to) } });
}

/** Puts back what a substitution replaced, exactly as it was written. */
export function putBackIngredient(event: Event, pair: { readonly now: string; readonly before: string }): EditResult {
  if (!standIns(event).some((s) => s.now === pair.now && s.before === pair.before)) return { problem: { id: 'buying.edit.noSwap' }, path: 'recipes' };
  return settled(putBack(event, pair), { id: 'buying.edit.putBack', params: { now: nameOf(pair.now), before: nameOf(pair.before) } });
}
