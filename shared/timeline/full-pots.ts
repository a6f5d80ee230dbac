import type { Profile } from '../measure';
import { lengthOf, type Job, type Need, type Placed } from './job';
import { place, takeBack, type Range } from './place';
import { profilesOf, type Resources } from './resources';

/** Pots that hold what a job made when it ends: those of its last stretch. */
const potsOf = (job: Job): readonly Need[] => (job.stretches.at(-1)?.needs ?? []).filter((n) => n.thing.split(':')[0] === 'pot');

const claims = (resources: Resources, job: Job): { readonly profile: Profile; readonly amount: number }[] =>
  potsOf(job).flatMap((need) => profilesOf(resources, need).map((profile) => ({ profile, amount: need.count })));

const end = (p: Placed): number => p.start + lengthOf(p.job);

/** Books (or with -1 gives back) the pots of a placed job for as long as they stand full. */
export function bookFull(resources: Resources, p: Placed, sign: 1 | -1): void {
  const { full } = p;
  if (full !== undefined) for (const { profile, amount } of claims(resources, p.job)) profile.add(end(p), full.until, sign * amount);
}

const bare = (p: Placed): boolean => !p.things || p.tooEarly > 0 || (p.who === null && p.job.stretches.some((s) => s.attention > 0));

/**
 * Places a recipe step so that its pots can stand full until they are emptied. Where that leaves it no start, it is placed as if they were
 * emptied at once, and says so.
 * @param until the next step of the dish begins, or it is served.
 */
export function placeWithPots(resources: Resources, job: Job, range: Range, until: number): Placed {
  const pots = claims(resources, job);
  if (pots.length === 0 || !Number.isFinite(until)) return place(resources, job, range);
  const since = pots.reduce((most, { profile, amount }) => Math.max(most, profile.freeSince(until, amount)), Number.NEGATIVE_INFINITY);
  const low = Math.max(range.low, since - lengthOf(job));
  if (low <= range.high + 1e-9) {
    const placed = place(resources, job, { low, high: range.high });
    if (!bare(placed)) return stands(resources, placed, until);
    takeBack(resources, placed);
  }
  const placed = place(resources, job, range);
  if (!placed.things || end(placed) >= until - 1e-9) return placed;
  if (pots.every(({ profile, amount }) => profile.clashIndex(end(placed), until, amount) < 0)) return stands(resources, placed, until);
  return { ...placed, job: { ...job, note: { id: 'timeline.note.emptyPot', params: { from: end(placed), until } } } };
}

function stands(resources: Resources, placed: Placed, until: number): Placed {
  if (end(placed) >= until - 1e-9) return placed;
  const full = { ...placed, full: { until } };
  bookFull(resources, full, 1);
  return full;
}
