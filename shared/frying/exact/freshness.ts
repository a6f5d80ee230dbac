import { countUpTo, type FryBatch, type FryProblem } from './problem';

/**
 * Splits the portions over batches whose put-ins are settled: each portion comes from the latest lift that still lets all be served, so
 * food waits as little as these lifts allow. From the last batch back, a batch takes what is wanted at least `lead` after its lift, and
 * leaves to the earlier ones only what does not fit.
 */
export function freshest(p: FryProblem, drops: readonly number[]): FryBatch[] {
  const batches: FryBatch[] = [];
  let end = p.wanted.length;
  for (let j = drops.length - 1; j >= 0; j -= 1) {
    const dropAt = drops[j] ?? 0;
    const first = Math.max(end - p.load, countUpTo(p.wanted, dropAt + p.fry + p.lead - 1), 0);
    batches.unshift({ dropAt, first, end });
    end = first;
  }
  return batches;
}
