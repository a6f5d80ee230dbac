import { useEffect, useId, useSyncExternalStore } from 'react';
import type { Figure } from '../../shared/figure';

/** The figure whose working is shown, and the way down into the figures it rests on. */
export interface OpenWorking {
  /** Component the figure was opened from; gives back the focus on closing. */
  readonly owner: string;
  readonly title: string;
  readonly figure: Figure;
  /** How the number stands where it was opened, when that is rounded to be measured. */
  readonly shownAs: string | undefined;
  /** Keys of the terms followed from the figure, outermost first. */
  readonly path: readonly string[];
}

let open: OpenWorking | null = null;
const listeners = new Set<() => void>();
function set(next: OpenWorking | null): void {
  open = next;
  for (const listener of listeners) listener();
}
const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Opens, closes and walks the working panel. */
export const working = {
  open: (owner: string, title: string, figure: Figure, shownAs?: string): void => set({ owner, title, figure, shownAs, path: [] }),
  close: (): void => {
    const owner = open?.owner;
    set(null);
    if (owner !== undefined) document.getElementById(owner)?.focus();
  },
  into: (key: string): void => { if (open !== null) set({ ...open, path: [...open.path, key] }); },
  backTo: (depth: number): void => { if (open !== null) set({ ...open, path: open.path.slice(0, depth) }); },
};

/** The open working, or null. */
export const useWorking = (): OpenWorking | null => useSyncExternalStore(subscribe, () => open);

/** Ties a button to the panel: the panel follows the button's figure as the plan changes. */
export function useOpens(title: string, figure: Figure, shownAs?: string): { readonly id: string; readonly isOpen: boolean; readonly toggle: () => void } {
  const id = useId();
  const isOpen = useSyncExternalStore(subscribe, () => open?.owner === id);
  useEffect(() => {
    if (isOpen && open !== null && open.figure !== figure) set({ ...open, title, figure, shownAs });
  }, [isOpen, title, figure, shownAs]);
  return { id, isOpen, toggle: () => (isOpen ? working.close() : working.open(id, title, figure, shownAs)) };
}
