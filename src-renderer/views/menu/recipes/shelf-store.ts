import { useEffect, useSyncExternalStore } from 'react';
import type { Recipe } from '../../../../shared/event';
import { emptyShelf, mergeShelf, parseShelf, sameRecipe, serialiseShelf, shelfFormat, type Shelf } from '../../../../shared/household';
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
export type OnShelf = 'no' | 'same' | 'other';

/** Whether the shelf has this very recipe, another under its short name, or none. */
export function onShelf(shelf: Shelf, recipe: Recipe): OnShelf {
  const kept = shelf.recipes.find((own) => own.id === recipe.id);
  return kept === undefined ? 'no' : sameRecipe(kept, recipe) ? 'same' : 'other';
}

/** Keeps a recipe on the shelf; one of the same short name there is replaced, and the file before stays as `.bak`. The shelf is read first, so that nothing of it is lost. */
export async function keepOnShelf(recipe: Recipe): Promise<Message | Problem | null> {
  const now = await read();
  if (now.problem !== null) return now.problem;
  const merged = mergeShelf(now.shelf, { format: shelfFormat, recipes: [recipe] }, () => 'theirs');
  if (!merged.ok) return merged.message;
  const answer = await call('shelf.write', { text: serialiseShelf(merged.shelf), expect: now.modified });
  if (!answer.ok) return answer.problem;
  set({ shelf: merged.shelf, modified: answer.value.modified, problem: null, isRead: true });
  return null;
}
