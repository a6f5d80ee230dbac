import { lengthOf, type Placed } from './job';
import { profilesOf, type Resources } from './resources';

/** One use of a person or a thing by a placed job, in minutes from the job's start. */
interface Use {
  readonly job: number;
  readonly from: number;
  readonly to: number;
  /** The minute of the day at which the plan has it begin. */
  readonly at: number;
}

/** Jobs at the hot oil stay where the frying plan put them. */
const atOil = (p: Placed): boolean => p.job.kind === 'fry' || p.job.kind === 'watchOil' || p.job.kind === 'heatOil';

/** Who and what each placed job uses; home and day are different hours of the same person. */
function usesOf(resources: Resources, placed: readonly Placed[]): Map<unknown, Use[]> {
  const uses = new Map<unknown, Use[]>();
  const add = (key: unknown, use: Use): void => {
    const known = uses.get(key);
    if (known === undefined) uses.set(key, [use]);
    else known.push(use);
  };
  placed.forEach((p, job) => {
    let from = 0;
    for (const stretch of p.job.stretches) {
      const to = from + stretch.minutes;
      if (p.who !== null && (stretch.attention > 0 || p.job.kind === 'watchOil')) add(p.who, { job, from, to, at: p.start + from });
      if (p.things) for (const need of stretch.needs) for (const profile of profilesOf(resources, need)) add(profile, { job, from, to, at: p.start + from });
      from = to;
    }
  });
  return uses;
}

/** Latest end of a placed job by its own window and, on the day, the hours of whoever does it. */
function ownEnd(resources: Resources, p: Placed): number {
  const window = p.job.latest;
  const helper = p.who === null || p.home ? undefined : resources.helpers.find((h) => h.person.id === p.who);
  // Only stretches with something to do end with the hours; what runs by itself may run on.
  let [from, tail] = [0, 0];
  for (const s of p.job.stretches) {
    from += s.minutes;
    if (s.attention > 0) tail = from;
  }
  return helper === undefined || tail === 0 ? window : Math.min(window, helper.person.to + lengthOf(p.job) - tail);
}

/** Place of the first use, in order of time, that begins at `from` or later. */
function firstFrom(uses: readonly Use[], from: number): number {
  let [low, high] = [0, uses.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const use = uses[middle];
    if (use !== undefined && use.at < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Minutes each placed job could start later with everything still done in its window, when the jobs after it move on as far as they may:
 * latest start by the longest path backward (critical-path method) over the order of the steps, and over the order in which the plan gives
 * each person and thing to its jobs. Whole minutes, 0 = cannot slip. Jobs at the oil do not move; a job the household does keeps to its evening.
 *
 * The order on a person or thing is kept for every pair that does not overlap in the plan. Jobs that end up side by side were so before, so
 * nobody and nothing is over-booked by it. A job that starts earlier but comes later on the same thing is taken as standing still.
 */
export function slacksOf(resources: Resources, placed: readonly Placed[]): number[] {
  const latest = placed.map((p) => p.start);
  const order = placed.map((_, i) => i).sort((a, b) => (placed[b]?.start ?? 0) - (placed[a]?.start ?? 0) || b - a);
  const byId = new Map(placed.map((p, i) => [p.job.id, i]));
  const waiting: number[][] = placed.map(() => []);
  placed.forEach((p, i) => {
    for (const id of p.job.after) {
      const before = byId.get(id);
      if (before === undefined) continue;
      waiting[before]?.push(i);
    }
  });
  const own: { readonly use: Use; readonly others: readonly Use[] }[][] = placed.map(() => []);
  for (const list of usesOf(resources, placed).values()) {
    list.sort((a, b) => a.at - b.at);
    for (const use of list) own[use.job]?.push({ use, others: list });
  }
  const latestOf = (i: number): number => latest[i] ?? 0;
  for (const i of order) {
    const p = placed[i];
    if (p === undefined || atOil(p) || (p.home && p.job.kind === 'step')) continue;
    const length = lengthOf(p.job);
    let end = ownEnd(resources, p);
    for (const next of waiting[i] ?? []) end = Math.min(end, latestOf(next));
    let start = end - length;
    for (const { use, others } of own[i] ?? []) {
      const until = p.start + use.to;
      // Nothing moves to before its place in the plan: beyond what bounds the start already, nothing can bound it more.
      for (let k = firstFrom(others, until - 1e-9); k < others.length; k += 1) {
        const o = others[k];
        if (o === undefined || o.at - use.to >= start) break;
        if (o.job !== i) start = Math.min(start, latestOf(o.job) + o.from - use.to);
      }
    }
    latest[i] = Math.max(p.start, start);
  }
  return placed.map((p, i) => Math.max(0, Math.floor((latest[i] ?? p.start) - p.start + 1e-9)));
}
