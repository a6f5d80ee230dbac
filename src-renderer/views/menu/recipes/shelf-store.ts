import { useEffect, useSyncExternalStore } from 'react';
import type { Recipe } from '../../../../shared/event';
import { emptyShelf, freeName, joinDoubles, mergeShelf, nameKey, parseShelf, sameRecipe, serialiseShelf, shelfFormat, type MergeChoice, type Shelf } from '../../../../shared/household';
import type { Problem } from '../../../../shared/host';
import type { Message } from '../../../../shared/words';
import { call } from '../../../bridge';

/** The household's recipes as last read; `problem` says why there are none. */
export interface ShelfState {
  readonly shelf: Shelf;
  readonly modified: number | null;
  readonly problem: Message | Problem | null;
  readonly isRead: boolean;
}

let state: ShelfState = { shelf: emptyShelf, modified: null, problem: null, isRead: false };
const listeners = new Set<() => void>();

function set(next: ShelfState): ShelfState {
  state = next;
  for (const listener of listeners) listener();
  return next;
}

async function read(): Promise<ShelfState> {
  const answer = await call('shelf.read', {});
  if (!answer.ok) return set({ ...state, problem: answer.problem, isRead: true });
  const parsed = parseShelf(answer.value.text);
  if (!parsed.ok) return set({ ...state, problem: parsed.problems[0]?.message ?? null, isRead: true });
  return set({ shelf: parsed.shelf, modified: answer.value.modified, problem: null, isRead: true });
}

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The household's recipes, read anew each time a page that shows them is opened. */
export function useHouseholdShelf(): ShelfState {
  useEffect(() => { void read(); }, []);
  return useSyncExternalStore(subscribe, () => state);
}

/** How a recipe stands to the shelf. */
export type OnShelf = 'no' | 'same' | 'other' | 'named';

/** Whether the shelf has this very recipe, another under its short name, another of its name, or none. */
export function onShelf(shelf: Shelf, recipe: Recipe): OnShelf {
  const kept = shelf.recipes.find((own) => own.id === recipe.id);
  if (kept !== undefined) return sameRecipe(kept, recipe) ? 'same' : 'other';
  return shelf.recipes.some((own) => nameKey(own.name) === nameKey(recipe.name)) ? 'named' : 'no';
}

/** The shelf with a recipe on it: in the place of the one of its short name or its name (`theirs`), or beside it under a name of its own (`both`). */
export function shelvedWith(shelf: Shelf, recipe: Recipe, choice: 'theirs' | 'both'): ReturnType<typeof mergeShelf> {
  const named = shelf.recipes.find((own) => own.id === recipe.id) ?? shelf.recipes.find((own) => nameKey(own.name) === nameKey(recipe.name));
  const incoming = named === undefined ? recipe : choice === 'theirs' ? { ...recipe, id: named.id } : { ...recipe, name: freeName(shelf, recipe.name) };
  return mergeShelf(shelf, { format: shelfFormat, recipes: [incoming] }, () => choice);
}

/** Writes what a change makes of the shelf. It is read first, so that nothing of it is lost; the file before stays as `.bak`. */
async function write(change: (shelf: Shelf) => ReturnType<typeof mergeShelf>): Promise<Message | Problem | null> {
  const now = await read();
  if (now.problem !== null) return now.problem;
  const next = change(now.shelf);
  if (!next.ok) return next.message;
  const answer = await call('shelf.write', { text: serialiseShelf(next.shelf), expect: now.modified });
  if (!answer.ok) return answer.problem;
  set({ shelf: next.shelf, modified: answer.value.modified, problem: null, isRead: true });
  return null;
}

/** Keeps a recipe on the shelf. */
export const keepOnShelf = (recipe: Recipe, choice: 'theirs' | 'both' = 'theirs'): Promise<Message | Problem | null> => write((shelf) => shelvedWith(shelf, recipe, choice));

/** Joins two recipes of one name on the shelf. */
export const joinOnShelf = (first: string, second: string, choice: MergeChoice): Promise<Message | Problem | null> =>
  write((shelf) => ({ ok: true, shelf: joinDoubles(shelf, first, second, choice), report: { added: [], same: [], kept: [], replaced: [], renamed: [] } }));
