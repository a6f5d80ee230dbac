import { addDish, addRecipe, freshId, type EditResult } from '../../../../shared/edit';
import { firstServing } from '../../../../shared/cooking';
import type { Event, Recipe } from '../../../../shared/event';

/** Longest start of a short name, so that a number still fits behind it. */
const longest = 56;

/** A short name from a name: letters, digits and dashes; "grandma's" is one word. */
export const shortName = (name: string): string =>
  name.normalize('NFD').replace(/[\p{M}'’‘`´]/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '').slice(0, longest).replace(/-$/, '') || 'recipe';

/** A short name no other of the list has: the plain one where it is free. */
export function freeId(list: readonly { readonly id: string }[], name: string): string {
  const plain = shortName(name);
  return list.some((item) => item.id === plain) ? freshId(list, plain) : plain;
}

/** Puts a recipe on the menu. What an event uses is copied into it; a recipe the event has already is used as it is there. A dish of a meal is served at a time it keeps for, not all day. One step of undo. */
export function putOnMenu(event: Event, recipe: Recipe): EditResult {
  const ready = event.recipes.some((own) => own.id === recipe.id) ? null : addRecipe(event, recipe);
  if (ready !== null && 'problem' in ready) return ready;
  const start = ready?.event ?? event;
  const id = start.menu.dishes.some((dish) => dish.id === recipe.id) ? freshId(start.menu.dishes, recipe.id.slice(0, longest)) : recipe.id;
  return addDish(start, { id, recipe: recipe.id, served: firstServing(start, recipe) });
}

/** A second copy of a recipe under a name of its own, to try something with. */
export function duplicateRecipe(event: Event, id: string, name: string): { readonly id: string; readonly result: EditResult } | null {
  const recipe = event.recipes.find((own) => own.id === id);
  if (recipe === undefined) return null;
  const second = freeId(event.recipes, name);
  return { id: second, result: addRecipe(event, { ...recipe, id: second, name }) };
}
