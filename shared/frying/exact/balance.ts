import { countUpTo, type FryBatch, type FryProblem } from './problem';

/**
 * The same batches at the same minutes, with portions moved to a neighbouring batch where one would be tiny: no portion outside lead and hold, no
 * batch above the load. A least size is raised piece by piece for all batches, up to `atLeast`; a batch that cannot follow stays behind, the
 * others go on. So the smallest batch is as large as it can be, and after it the next. Among such splits each portion goes to the latest
 * batch it can. `moreWait` minutes is the most that portions may wait longer on average than in the given split.
 */
export function balanced(p: FryProblem, batches: readonly FryBatch[], atLeast: number, moreWait: number): readonly FryBatch[] {
  const mostWaiting = waiting(p, batches) + moreWait * p.wanted.length;
  let floors = batches.map(() => 1);
  let split = batches;
  const behind = new Set<number>();
  for (let size = 2; size <= Math.min(atLeast, p.load); size += 1) {
    for (let j = 0; j < batches.length; j += 1) {
      if (behind.has(j)) continue;
      const raised = floors.with(j, size);
      const found = sizeOf(split[j]) >= size ? split : splitWith(p, batches, raised);
      if (found === null || waiting(p, found) > mostWaiting) behind.add(j);
      else [floors, split] = [raised, found];
    }
  }
  return split;
}

const sizeOf = (b: FryBatch | undefined): number => (b === undefined ? 0 : b.end - b.first);

/** Minutes all portions together wait from lift to eating. */
const waiting = (p: FryProblem, batches: readonly FryBatch[]): number =>
  batches.reduce((sum, b) => sum + p.wanted.slice(b.first, b.end).reduce((s, t) => s + t - b.dropAt - p.fry, 0), 0);

/**
 * The split with batch j of at least `floors[j]` that waits least; null when there is none. The first portions batch j can have form an interval that
 * follows from that of batch j - 1, so that one walk over the batches decides.
 */
function splitWith(p: FryProblem, batches: readonly FryBatch[], floors: readonly number[]): readonly FryBatch[] | null {
  const starts: { readonly low: number; readonly high: number }[] = [];
  let low = 0;
  let high = 0;
  for (const [j, { dropAt }] of batches.entries()) {
    // Portions wanted sooner than the lead after the lift belong to a batch before; those wanted after the hold to one behind.
    low = Math.max(low, countUpTo(p.wanted, dropAt + p.fry + p.lead - 1));
    high = Math.min(high, p.wanted.length);
    if (low > high) return null;
    starts.push({ low, high });
    low += floors[j] ?? 1;
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
