import { lengthOf, type Job, type Placed } from './job';
import { FirstOf } from './first-of';
import { bookFull, placeWithPots } from './full-pots';
import { bookAgain, rangeOf, takeBack } from './place';
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

/** Minutes by which single jobs count as due later, by id; below 0 sooner. Only their order changes, never their windows. */
export type Nudge = ReadonlyMap<string, number>;

/** Which of the jobs that may be placed next comes first. */
type Rank = (job: Job) => readonly [number, number];

/** Jobs in the order in which they are placed when nothing else decides. */
interface Queue {
  readonly jobs: readonly Job[];
  /** Places in the queue of those each job waits for. */
  readonly after: readonly (readonly number[])[];
  /** How many wait for each. */
  readonly waiting: Int32Array;
}

function queueOf(jobs: readonly Job[], rank: Rank): Queue {
  const ranks = new Map(jobs.map((j) => [j, rank(j)]));
  const by = (j: Job, k: 0 | 1): number => ranks.get(j)?.[k] ?? 0;
  const queue = jobs.toSorted((a, b) => by(b, 0) - by(a, 0) || by(b, 1) - by(a, 1) || (a.id < b.id ? -1 : 1));
  const placeOf = new Map(queue.map((j, at) => [j.id, at]));
  const after = queue.map((job) => job.after.flatMap((id) => placeOf.get(id) ?? []));
  const waiting = new Int32Array(queue.length);
  for (const list of after) for (const at of list) waiting[at] = (waiting[at] ?? 0) + 1;
  return { jobs: queue, after, waiting };
}

/** Serial generation backward with one order: each job as late as its window, the jobs that wait for it, helpers and things allow. */
function placeInOrder(resources: Resources, { jobs: queue, after, waiting }: Queue): Placed[] {
  // How many of those that wait for each job are still to be placed, and the first start among those that are.
  const open = waiting.slice();
  const before = new Float64Array(queue.length).fill(Number.POSITIVE_INFINITY);
  const ready = new FirstOf(queue.length);
  open.forEach((n, at) => { if (n === 0) ready.add(at); });
  const placed: Placed[] = [];
  const done = new Uint8Array(queue.length);
  for (let rest = 0; placed.length < queue.length;) {
    let at = ready.take();
    // Jobs in a circle are never ready: the first that is open goes first.
    if (at < 0) {
      while (done[rest] === 1) rest += 1;
      at = rest;
    }
    if (done[at] === 1) continue;
    done[at] = 1;
    const job = queue[at];
    if (job === undefined) break;
    const next = before[at] ?? Number.POSITIVE_INFINITY;
    const made = placeWithPots(resources, job, rangeOf(job, next, Number.NEGATIVE_INFINITY), Number.isFinite(next) ? next : job.latest);
    placed.push(made);
    for (const earlier of after[at] ?? []) {
      before[earlier] = Math.min(before[earlier] ?? 0, made.start);
      open[earlier] = (open[earlier] ?? 0) - 1;
      if (open[earlier] === 0) ready.add(earlier);
    }
  }
  return placed;
}

/** How bad a placement is: jobs without hands or things first, then minutes too early. */
const badness = (placed: readonly Placed[]): number => placed.reduce((sum, p) => {
  const bare = !p.things || (p.who === null && p.job.stretches.some((s) => s.attention > 0));
  return sum + (bare ? 10_000 : 0) + p.tooEarly;
}, 0);

/** Recipe steps, and the orders in which they are tried; each worked out when it is first wanted. */
export interface StepOrders {
  readonly jobs: readonly Job[];
  readonly ends: ReadonlyMap<string, number>;
  readonly queues: (Queue | undefined)[];
}

/** Makes recipe steps ready to be placed, in one order or several. */
export const stepOrders = (jobs: readonly Job[]): StepOrders => ({ jobs, ends: latestEnds(jobs), queues: [] });

function ranksOf({ ends }: StepOrders, nudge?: Nudge): readonly Rank[] {
  const end = (j: Job): number => (ends.get(j.id) ?? j.latest) + (nudge?.get(j.id) ?? 0);
  const room = (j: Job): number => end(j) - j.notDoneBefore;
  return [(j) => [end(j), lengthOf(j)], (j) => [-room(j), end(j)], (j) => [lengthOf(j), end(j)]];
}

/**
 * Recipe steps placed just in time: the job that must be done last is placed first (latest-finish rule). When something does not fit,
 * two other orders are tried (least room first; most work first) and the best is kept, the first one on a tie.
 * Source: serial schedule generation, Kolisch 1996 (from memory).
 */
export function placeBackward(resources: Resources, steps: StepOrders, nudge?: Nudge): Placed[] {
  let best: { readonly placed: Placed[]; readonly bad: number } | null = null;
  for (const [k, rank] of ranksOf(steps, nudge).entries()) {
    const queue = nudge === undefined ? (steps.queues[k] ??= queueOf(steps.jobs, rank)) : queueOf(steps.jobs, rank);
    const placed = placeInOrder(resources, queue);
    const bad = badness(placed);
    if (bad === 0) return placed;
    if (best === null || bad < best.bad) best = { placed, bad };
    for (const p of placed) {
      takeBack(resources, p);
      bookFull(resources, p, -1);
    }
  }
  for (const p of best?.placed ?? []) {
    bookAgain(resources, p);
    bookFull(resources, p, 1);
  }
  return best?.placed ?? [];
}
