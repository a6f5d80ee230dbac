import { countUpTo, type FryBatch, type FryProblem } from './problem';

/**
 * The same batches at the same minutes, with portions moved to a neighbouring earlier batch where one would be tiny: the smallest batch as large
 * as it can be up to `atLeast` pieces, no portion outside lead and hold, no batch above the load. Among such splits each portion still goes
 * to the latest batch it can. `moreWait` minutes is the most that a portion may wait longer on average; a split that needs more gives way to
 * one with a smaller smallest batch, and in the end to the given one. Ends of batch j range over an interval that follows from those of
 * batch j - 1, so that each size is decided in one walk over the batches.
 */
export function balanced(p: FryProblem, batches: readonly FryBatch[], atLeast: number, moreWait: number): readonly FryBatch[] {
  const now = smallest(batches);
  const before = waiting(p, batches);
  for (let size = Math.min(atLeast, p.load, Math.floor(p.wanted.length / Math.max(1, batches.length))); size > now; size -= 1) {
    const split = splitWith(p, batches, size);
    if (split !== null && waiting(p, split) - before <= moreWait * p.wanted.length) return split;
  }
  return batches;
}

const smallest = (batches: readonly FryBatch[]): number => Math.min(...batches.map((b) => b.end - b.first));

/** Minutes all portions together wait from lift to eating. */
const waiting = (p: FryProblem, batches: readonly FryBatch[]): number =>
  batches.reduce((sum, b) => sum + p.wanted.slice(b.first, b.end).reduce((s, t) => s + t - b.dropAt - p.fry, 0), 0);

/** The split with batches of at least `size` that waits least; null when there is none. */
function splitWith(p: FryProblem, batches: readonly FryBatch[], size: number): readonly FryBatch[] | null {
  const starts: { readonly low: number; readonly high: number }[] = [];
  let low = 0;
  let high = 0;
  for (const { dropAt } of batches) {
    // Portions wanted sooner than the lead after the lift belong to a batch before; those wanted after the hold to one behind.
    low = Math.max(low, countUpTo(p.wanted, dropAt + p.fry + p.lead - 1));
    high = Math.min(high, p.wanted.length);
    if (low > high) return null;
    starts.push({ low, high });
    low += size;
    high = Math.min(high + p.load, countUpTo(p.wanted, dropAt + p.fry + p.hold));
    if (low > high) return null;
  }
  if (p.wanted.length < low || p.wanted.length > high) return null;
  const split: FryBatch[] = [];
  let end = p.wanted.length;
  for (let j = batches.length - 1; j >= 0; j -= 1) {
    const first = Math.max(end - p.load, starts[j]?.low ?? 0);
    split.unshift({ dropAt: batches[j]?.dropAt ?? 0, first, end });
    end = first;
  }
  return split;
}
