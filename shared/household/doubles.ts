import type { Recipe } from '../event';
import type { MergeChoice } from './merge-shelf';
import { sameRecipe } from './merge-shelf';
import type { Shelf } from './shelf';

/** Two recipes of a shelf under one name. `first` stands before `second`. */
export interface Double {
  readonly first: Recipe;
  readonly second: Recipe;
  /** They differ in nothing but their short name. */
  readonly isSame: boolean;
}

/** A name as names are compared: letters and figures only, without marks or capitals. */
export const nameKey = (name: string): string => name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/** Every recipe of a shelf that has the name of one before it, each with the first of that name. */
export function doublesOf(shelf: Shelf): readonly Double[] {
  const firsts = new Map<string, Recipe>();
  return shelf.recipes.flatMap((second) => {
    const key = nameKey(second.name);
    const first = firsts.get(key);
    if (first !== undefined) return [{ first, second, isSame: sameRecipe({ ...second, id: first.id, name: first.name }, first) }];
    firsts.set(key, second);
    return [];
  });
}

/** A name that no recipe of the shelf has: the plain one with the next free number behind it. */
export function freeName(shelf: Shelf, name: string): string {
  const taken = new Set(shelf.recipes.map((recipe) => nameKey(recipe.name)));
  for (let n = 2; ; n++) {
    const next = `${name.slice(0, 110)} (${n})`;
    if (!taken.has(nameKey(next))) return next;
  }
}

/**
 * Joins two recipes of one name: `ours` leaves the first and takes the second out; `theirs` puts the second in the place and under the short name
 * of the first; `both` keeps both, the second under a name of its own. Nothing else of the shelf changes; a short name that is not there changes nothing.
 */
export function joinDoubles(shelf: Shelf, first: string, second: string, choice: MergeChoice): Shelf {
  const [a, b] = [shelf.recipes.find((recipe) => recipe.id === first), shelf.recipes.find((recipe) => recipe.id === second)];
  if (a === undefined || b === undefined || a === b) return shelf;
  if (choice === 'both') return { ...shelf, recipes: shelf.recipes.map((recipe) => (recipe === b ? { ...b, name: freeName(shelf, b.name) } : recipe)) };
  const rest = shelf.recipes.filter((recipe) => recipe !== b);
  return { ...shelf, recipes: choice === 'ours' ? rest : rest.map((recipe) => (recipe === a ? { ...b, id: a.id } : recipe)) };
}
