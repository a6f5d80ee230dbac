import { freshPlan } from './fresh-plan';
import type { FryBatch, FryProblem } from './problem';

/** Batches of so few pieces are mended: nobody finishes a bowl for them. */
const tiny = 2;
/** Batches looked at together: the tiny one and those before it. */
const reach = 3;

/**
 * The same number of batches, with tiny ones filled from those before by putting a few in a little earlier: of each tiny batch and the two before
 * it the freshest plan in which small batches count as waiting, between the neighbours, which stay. Small enough to be instant. One pan only.
 */
export function mended(p: FryProblem, batches: readonly FryBatch[], small: number, dear: number): readonly FryBatch[] {
  if (p.pans !== 1 || p.load <= tiny * reach) return batches;
  let mend = batches;
  for (let j = 1; j < batches.length; j += 1) {
    const b = mend[j];
    if (b !== undefined && b.end - b.first <= tiny) mend = around(p, mend, j, small, dear);
  }
  return mend;
}

function around(p: FryProblem, batches: readonly FryBatch[], j: number, small: number, dear: number): readonly FryBatch[] {
  const from = Math.max(0, j + 1 - reach);
  const [start, stop] = [batches[from]?.first ?? 0, batches[j]?.end ?? 0];
  const now = stop - (batches[j]?.first ?? 0);
  const next = batches[j + 1]?.dropAt ?? Infinity;
  const part: FryProblem = {
    ...p, wanted: p.wanted.slice(start, stop), earliest: Math.max(p.earliest, (batches[from - 1]?.dropAt ?? -Infinity) + p.cycle, (p.wanted[start] ?? 0) - p.hold - p.fry), free: (t) => (t >= next ? 0 : p.free(t)),
  };
  const count = j + 1 - from;
  // As many batches as before: the part alone might do with fewer, which only the neighbours forbid.
  for (let more = 0; more < count; more += 1) {
    const plan = freshPlan(part, { more, small, dear, width: 1, effort: 0 });
    if (plan === null) continue;
    if (plan.batches.length > count) return batches;
    const least = Math.min(...plan.batches.map((b) => b.end - b.first));
    if (plan.batches.length < count || least <= now) continue;
    return [...batches.slice(0, from), ...plan.batches.map((b) => ({ ...b, first: b.first + start, end: b.end + start })), ...batches.slice(j + 1)];
  }
  return batches;
}
