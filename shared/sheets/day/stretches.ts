import type { FryingPlan } from '../../frying';
import type { Task } from '../../timeline';

/** Minutes without a batch after which frying counts as begun anew, and the longest stretch told in one row (our choice, so that a wall plan shows frying where it happens). */
const pauseMinutes = 30;
const longestMinutes = 120;

/** Key of the fry stretch each batch belongs to, by batch number: batches at one station that follow one another without a long pause. */
export function stretchOfBatch(tasks: readonly Task[], frying: FryingPlan): ReadonlyMap<number, string> {
  const keys = new Map<number, string>();
  const open = new Map<string, { readonly key: string; readonly start: number; end: number }>();
  for (const task of tasks.filter((t) => t.kind === 'fry').toSorted((a, b) => a.start - b.start)) {
    const batch = frying.batches.find((b) => b.number === task.batch);
    if (batch === undefined) continue;
    let run = open.get(batch.station);
    if (run === undefined || task.start - run.end > pauseMinutes || task.end - run.start > longestMinutes) {
      run = { key: `stretch/${batch.station}/${batch.number}`, start: task.start, end: task.end };
      open.set(batch.station, run);
    }
    run.end = task.end;
    keys.set(batch.number, run.key);
  }
  return keys;
}

/** Key of the fry stretch a bowl belongs to: that of the first of these batches that uses it; none when no such batch is there. */
export function stretchOfBowl(bowl: number | undefined, batches: ReadonlyMap<number, string>, frying: FryingPlan): string | undefined {
  const first = frying.batches.find((b) => bowl !== undefined && b.bowls.includes(bowl) && batches.has(b.number));
  return first === undefined ? undefined : batches.get(first.number);
}
