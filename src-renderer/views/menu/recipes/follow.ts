import { useLayoutEffect, useRef, type KeyboardEvent, type RefObject } from 'react';

const controls = 'input, select, button';

/** The row around an element, among rows that say their place in `data-at`. */
const rowOf = (element: Element | null): HTMLElement | null => element?.closest<HTMLElement>('[data-at]') ?? null;

/**
 * Moves rows and keeps the cursor with the one that moved. Rows say their place in `data-at`; Alt with the arrow up or down moves the row
 * the cursor is in. `move` answers whether the row went.
 */
export function useFollow(move: (at: number, by: -1 | 1) => boolean): { readonly box: RefObject<HTMLTableSectionElement | null>; readonly onKeyDownCapture: (e: KeyboardEvent) => void; readonly go: (at: number, by: -1 | 1) => void } {
  const box = useRef<HTMLTableSectionElement>(null);
  const wanted = useRef<{ readonly at: number; readonly control: number } | null>(null);
  useLayoutEffect(() => {
    const to = wanted.current;
    wanted.current = null;
    if (to === null) return;
    const found = [...(box.current?.querySelector(`[data-at="${to.at}"]`)?.querySelectorAll<HTMLElement>(controls) ?? [])];
    const same = found[to.control];
    // A button that has come to the end of the list cannot be pressed; the last that can stands beside it.
    const next = same?.hasAttribute('disabled') === true ? found.findLast((one) => one instanceof HTMLButtonElement && !one.disabled) : same;
    next?.focus();
  });
  const go = (at: number, by: -1 | 1): void => {
    const row = rowOf(document.activeElement);
    const all = row === null ? [] : [...row.querySelectorAll(controls)];
    const control = document.activeElement === null ? 0 : Math.max(0, all.indexOf(document.activeElement));
    if (move(at, by)) wanted.current = { at: at + by, control };
  };
  const onKeyDownCapture = (e: KeyboardEvent): void => {
    const by = e.key === 'ArrowUp' ? -1 : e.key === 'ArrowDown' ? 1 : null;
    const at = Number(rowOf(e.target instanceof Element ? e.target : null)?.dataset['at']);
    if (!e.altKey || by === null || !Number.isInteger(at)) return;
    e.preventDefault();
    e.stopPropagation();
    go(at, by);
  };
  return { box, onKeyDownCapture, go };
}
