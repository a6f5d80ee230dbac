import type { FryProblem } from './problem';

/**
 * Latest minute not after `bound` at which batch j may be put in, given the latest put-ins of the batches after it: at every minute t of its
 * time in the pan at least one pan is free, and of the batches from j on at most free(t) have been put in, that is batch j + free(t)
 * comes after t. Monotone: later bounds for the following batches never make this one earlier. -Infinity when no minute is left.
 */
export function latestDrop(p: FryProblem, drops: readonly number[], j: number, bound: number): number {
  let drop = bound;
  while (drop >= p.earliest && drop > -Infinity) {
    const clash = lastClash(p, drops, j, drop);
    if (clash === null) return drop;
    // The pan has to be free again before the minute of the clash.
    drop = clash - p.cycle;
  }
  return -Infinity;
}

function lastClash(p: FryProblem, drops: readonly number[], j: number, drop: number): number | null {
  for (let t = drop + p.cycle - 1; t >= drop; t -= 1) {
    const free = p.free(t);
    if (free < 1 || (drops[j + free] ?? Infinity) <= t) return t;
  }
  return null;
}
