import { highest } from '../measure';
import { changedJobs } from './changed-jobs';
import type { DayDraft } from './draft';
import { bookFull } from './full-pots';
import { lengthOf, type Job, type Placed } from './job';
import { placeOil, type Relief } from './oil-watch';
import { placeBackward, type Nudge } from './order';
import { placePinned } from './pinned';
import { place, rangeOf, takeBack } from './place';
import { backTo, bookedNow, type Booked, type Resources } from './resources';
import { noRest, placeInRelief, placeRest, type Rest } from './rests';
import { placeShopping } from './shopping';
import type { OffJob } from './types';
import { potWashing } from './upkeep-jobs';
import type { Message } from '../words';

/** The order in which jobs are placed, and whether somebody takes over at the oil so that who fries has a break. */
export interface Order {
  readonly setUpFirst: boolean;
  readonly restsFirst: boolean;
  readonly relief: Relief;
  /** Minutes by which single recipe steps count as due later (or sooner) when their order is made; for a search. */
  readonly nudge?: Nudge | undefined;
}

/** Everything placed once. */
export interface LaidOut {
  readonly draft: DayDraft;
  /** What is booked then: the people and things are shared by all orders of a draft. */
  readonly booked: Booked;
  readonly placed: readonly Placed[];
  readonly off: readonly OffJob[];
  /** Who has no room for a break or a meal. */
  readonly noRests: readonly { readonly person: string; readonly message: Message }[];
  /** What else the day must say: pots that nobody can wash. */
  readonly told: readonly Message[];
}

/** Places jobs one by one, each after those it waits for that are in the list. */
function placeEach(resources: Resources, jobs: readonly Job[]): Placed[] {
  const ends = new Map<string, number>();
  return jobs.map((job) => {
    const since = highest(job.after.map((id) => ends.get(id) ?? Number.NEGATIVE_INFINITY));
    const placed = place(resources, job, rangeOf(job, Number.POSITIVE_INFINITY, since));
    ends.set(job.id, placed.start + lengthOf(job));
    return placed;
  });
}

/** Jobs that have a minute in the plan of frying or drinks: at that minute with anybody who is free, and only when nobody is, later within their window, which is then said. */
function placeFixed(resources: Resources, jobs: readonly Job[]): Placed[] {
  const ends = new Map<string, number>();
  return jobs.map((job) => {
    const since = highest(job.after.map((id) => ends.get(id) ?? Number.NEGATIVE_INFINITY));
    const range = rangeOf(job, Number.POSITIVE_INFINITY, since);
    let placed = place(resources, job, { low: range.low, high: Math.max(range.low, Math.min(range.high, range.low)) });
    if (range.high > range.low && (!placed.things || (placed.who === null && job.stretches.some((s) => s.attention > 0)))) {
      takeBack(resources, placed);
      placed = place(resources, job, range);
    }
    const slid = placed.start > job.earliest + 1e-9 && job.stretches.some((s) => s.attention > 0);
    if (slid) placed = { ...placed, job: { ...job, note: { id: 'timeline.note.slid', params: { planned: job.earliest } } } };
    ends.set(job.id, placed.start + lengthOf(job));
    return placed;
  });
}

/**
 * Pots stand until they are empty and somebody has time to wash them, and are taken until then; where no pot can stand at all, it is washed at
 * once by whoever can. One that nobody can wash before the clean-up is told.
 */
function placeWashing(resources: Resources, steps: readonly Placed[], changed: (jobs: readonly Job[]) => readonly Job[], told: Message[]): Placed[] {
  return potWashing(resources.values, steps).flatMap(({ step, dish, alone, tries, job }): Placed[] => {
    const [first] = changed([alone]);
    if (first === undefined) return [];
    if (first.laid?.at !== undefined) return [placePinned(resources, first, first.laid.at)];
    // The pot it stands full in is part of the job from here on.
    bookFull(resources, step, -1);
    for (let k = 0; k < tries; k += 1) {
      const wash = job(k);
      const placed = place(resources, { ...wash, roles: first.roles, ...(first.laid === undefined ? {} : { laid: first.laid }) }, { low: wash.earliest, high: wash.earliest });
      if (placed.things && placed.who !== null) return [placed];
      takeBack(resources, placed);
    }
    bookFull(resources, step, 1);
    told.push({ id: 'timeline.note.unwashed', params: { dish, from: alone.earliest } });
    return [];
  });
}

function placeRests(resources: Resources, rests: readonly Rest[], noRests: { person: string; message: Message }[]): Placed[] {
  return rests.flatMap((rest): Placed[] => {
    const { at } = rest.job.laid ?? {};
    if (at !== undefined) return [placePinned(resources, rest.job, at)];
    const placed = placeRest(resources, rest);
    if (placed === null) noRests.push({ person: rest.job.roles[0] ?? '', message: noRest(resources, rest) });
    return placed === null ? [] : [placed];
  });
}

/**
 * Everything placed once: the hot oil first, then what the cook pinned, what frying and brewing fixed, setting up and recipe steps in this
 * order or the other, the house last; breaks before the recipe steps or in the gaps that are left.
 */
export function layOut(draft: DayDraft, order: Order): LaidOut {
  const { event, resources, early, rest, own, rests } = draft;
  backTo(resources, draft.blank);
  const off: OffJob[] = [...draft.off];
  const changed = (jobs: readonly Job[]): readonly Job[] => {
    const done = changedJobs(event, jobs);
    off.push(...done.off);
    return done.jobs;
  };
  const oil = placeOil(resources, draft.oil, order.relief);
  const pinned = draft.pinned.map((job) => placePinned(resources, job, job.laid?.at ?? job.earliest));
  const noRests: { person: string; message: Message }[] = [];
  const inRelief = rests.map((r) => (r.job.laid === undefined ? placeInRelief(resources, r) : null));
  const others = rests.filter((_, at) => inRelief[at] === null);
  const placedFixed = placeFixed(resources, draft.fixed);
  const before = order.setUpFirst || order.restsFirst ? placeEach(resources, early) : [];
  const restsBefore = order.restsFirst ? placeRests(resources, others, noRests) : [];
  const ownFirst = placeEach(resources, own);
  const placedSteps = placeBackward(resources, draft.steps, order.nudge);
  const allSteps = [...placedSteps, ...pinned.filter((p) => p.job.kind === 'step')];
  const late = placeEach(resources, [...(order.setUpFirst || order.restsFirst ? [] : early), ...rest]);
  const shopping = placeShopping(draft, allSteps);
  off.push(...shopping.off);
  const told: Message[] = [];
  const washing = placeWashing(resources, allSteps, changed, told);
  const restsAfter = order.restsFirst ? [] : placeRests(resources, others, noRests);
  const placed = [...oil, ...pinned, ...inRelief.flatMap((p) => p ?? []), ...placedFixed, ...restsBefore, ...before, ...ownFirst, ...placedSteps, ...late, ...shopping.placed, ...washing, ...restsAfter];
  return { draft, booked: bookedNow(resources), off, noRests, told, placed };
}
