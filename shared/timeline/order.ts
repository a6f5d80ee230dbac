import { lengthOf, type Job, type Placed } from './job';
import { place, rangeOf } from './place';
import type { Resources } from './resources';

/** Jobs that wait for each job, by id. */
function waitingFor(jobs: readonly Job[]): Map<string, Job[]> {
  const waiting = new Map<string, Job[]>(jobs.map((j) => [j.id, []]));
  for (const job of jobs) for (const id of job.after) waiting.get(id)?.push(job);
  return waiting;
}

/** Latest end of each job by windows and order alone (longest path backward). A job in a circle of jobs keeps its own window. */
export function latestEnds(jobs: readonly Job[]): Map<string, number> {
  const waiting = waitingFor(jobs);
  const ends = new Map<string, number>();
  const visiting = new Set<string>();
  const endOf = (job: Job): number => {
    const known = ends.get(job.id);
    if (known !== undefined) return known;
    if (visiting.has(job.id)) return job.latest;
    visiting.add(job.id);
    let end = job.latest;
    for (const next of waiting.get(job.id) ?? []) end = Math.min(end, endOf(next) - lengthOf(next));
    visiting.delete(job.id);
    ends.set(job.id, end);
    return end;
  };
  for (const job of jobs) endOf(job);
  return ends;
}

/**
 * Serial generation backward: the job that must be done last is placed first, each as late as its window, the jobs that wait for it,
 * helpers and things allow (just in time). Source: methods section 4.2 (serial schedule generation with the latest-finish rule).
 */
export function placeBackward(resources: Resources, jobs: readonly Job[], fixedStarts: ReadonlyMap<string, number>): Placed[] {
  const ends = latestEnds(jobs);
  const waiting = waitingFor(jobs);
  const starts = new Map(fixedStarts);
  const open = new Map(jobs.map((j) => [j.id, j]));
  const placed: Placed[] = [];
  const rank = (j: Job): number => ends.get(j.id) ?? j.latest;
  const queue = jobs.toSorted((a, b) => rank(b) - rank(a) || lengthOf(b) - lengthOf(a) || (a.id < b.id ? -1 : 1));
  while (open.size > 0) {
    const ready = queue.find((j) => open.has(j.id) && (waiting.get(j.id) ?? []).every((next) => !open.has(next.id)));
    const job = ready ?? queue.find((j) => open.has(j.id));
    if (job === undefined) break;
    open.delete(job.id);
    const before = Math.min(...(waiting.get(job.id) ?? []).map((next) => starts.get(next.id) ?? Number.POSITIVE_INFINITY));
    const done = place(resources, job, rangeOf(job, before, Number.NEGATIVE_INFINITY));
    starts.set(job.id, done.start);
    placed.push(done);
  }
  return placed;
}
