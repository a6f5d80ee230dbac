import { countUpTo, type FryBatch, type FryProblem } from './problem';

/**
 * The same batches at the same minutes, with portions moved to a neighbouring batch where one would be tiny: no portion outside lead and hold, no
 * batch above the load. A least size is raised piece by piece for all batches, up to `atLeast`; a batch that cannot follow stays behind, the
 * others go on. So the smallest batch is as large as it can be, and after it the next. Among such splits each portion goes to the latest
 * batch it can. `moreWait` minutes is the most that portions may wait longer on average than in the given split.
 */
export function balanced(p: FryProblem, batches: readonly FryBatch[], atLeast: number, moreWait: number): readonly FryBatch[] {
  const windows = windowsOf(p, batches);
  const waiting = waitingOf(p);
  const mostWaiting = waiting(batches) + moreWait * p.wanted.length;
  const floors = batches.map(() => 1);
  let split = batches;
  const behind = new Set<number>();
  for (let size = 2; size <= Math.min(atLeast, p.load); size += 1) {
    for (let j = 0; j < batches.length; j += 1) {
      if (behind.has(j)) continue;
      floors[j] = size;
      if (sizeOf(split[j]) >= size) continue;
      const found = splitWith(p, batches, windows, floors);
      if (found === null || waiting(found) > mostWaiting) {
        floors[j] = size - 1;
        behind.add(j);
      } else split = found;
    }
  }
  return split;
}

const sizeOf = (b: FryBatch | undefined): number => (b === undefined ? 0 : b.end - b.first);

/** Counts of portions that a batch's lift divides: wanted before its lead is over, and wanted up to the end of its hold. */
interface Window {
  readonly early: number;
  readonly inTime: number;
}

/** Found once: the lifts never move, only the split between them. */
const windowsOf = (p: FryProblem, batches: readonly FryBatch[]): Window[] =>
  batches.map(({ dropAt }) => ({ early: countUpTo(p.wanted, dropAt + p.fry + p.lead - 1), inTime: countUpTo(p.wanted, dropAt + p.fry + p.hold) }));

/** Minutes all portions of a split together wait from lift to eating; running totals make each answer as cheap as the number of batches. */
function waitingOf(p: FryProblem): (batches: readonly FryBatch[]) => number {
  const totals = [0];
  for (const t of p.wanted) totals.push((totals.at(-1) ?? 0) + t);
  return (batches) => batches.reduce((sum, b) => sum + (totals[b.end] ?? 0) - (totals[b.first] ?? 0) - sizeOf(b) * (b.dropAt + p.fry), 0);
}

/**
 * The split with batch j of at least `floors[j]` that waits least; null when there is none. The first portions batch j can have form an interval that
 * follows from that of batch j - 1, so that one walk over the batches decides.
 */
function splitWith(p: FryProblem, batches: readonly FryBatch[], windows: readonly Window[], floors: readonly number[]): readonly FryBatch[] | null {
  const starts: number[] = [];
  let low = 0;
  let high = 0;
  for (const [j, { early, inTime }] of windows.entries()) {
    // Portions wanted sooner than the lead after the lift belong to a batch before; those wanted after the hold to one behind.
    low = Math.max(low, early);
    high = Math.min(high, p.wanted.length);
    if (low > high) return null;
    starts.push(low);
    low += floors[j] ?? 1;
    high = Math.min(high + p.load, inTime);
    if (low > high) return null;
  }
  if (p.wanted.length < low || p.wanted.length > high) return null;
  const split: FryBatch[] = [];
  let end = p.wanted.length;
  for (let j = batches.length - 1; j >= 0; j -= 1) {
    const first = Math.max(end - p.load, starts[j] ?? 0);
    split.push({ dropAt: batches[j]?.dropAt ?? 0, first, end });
    end = first;
  }
  return split.toReversed();
}
