/** A dish among several in equal pans. */
export interface TinyDish {
  readonly wanted: readonly number[];
  readonly load: number;
  readonly fry: number;
  readonly cycle: number;
  readonly hold: number;
}

/**
 * Fewest portions nobody gets, over every way to put batches of several dishes into equal pans, minute by minute. Of given lifts each batch takes the
 * portions that are wanted first of those still within its hold (earliest deadline first, which serves the most). Shares nothing with the planner.
 */
export function fewestShort(dishes: readonly TinyDish[], pans: number): number {
  const all = dishes.flatMap((d) => d.wanted);
  const last = Math.max(...all);
  const first = Math.min(...dishes.map((d) => Math.min(...d.wanted, last) - d.hold - d.fry));
  const memo = new Map<string, number>();
  /** Most served of what is to come: `next` = first portion of each dish neither served nor past, `busy` = when each pan is free. */
  const most = (minute: number, next: readonly number[], busy: readonly number[]): number => {
    if (minute > last) return 0;
    const free = busy.map((b) => Math.max(b, minute)).sort((a, b) => a - b);
    const key = `${minute}|${next.join(',')}|${free.join(',')}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    let best = most(minute + 1, next, free);
    if ((free[0] ?? Infinity) <= minute) {
      dishes.forEach((d, i) => {
        const lift = minute + d.fry;
        let from = next[i] ?? 0;
        while (from < d.wanted.length && d.wanted[from]! < lift) from += 1;
        let to = from;
        while (to < d.wanted.length && to - from < d.load && d.wanted[to]! <= lift + d.hold) to += 1;
        if (to > from) best = Math.max(best, to - from + most(minute, next.map((n, k) => (k === i ? to : n)), [minute + d.cycle, ...free.slice(1)]));
      });
    }
    memo.set(key, best);
    return best;
  };
  return all.length - most(first, dishes.map(() => 0), Array.from({ length: pans }, () => first));
}
