import { earliestStart, latestStart } from '../measure';
import { lengthOf, type Job, type Placed } from './job';
import { homeClaims, household, nightClaims } from './household-claims';
import { claimsOf, factsOf } from './job-facts';
import { book, type Helper, type Resources } from './resources';

/** Range of starts open to a job. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Starts that keep a job's windows. `before` is the first start of a job that waits for it, `since` the last end of one it waits for. */
export function rangeOf(job: Job, before: number, since: number): Range {
  const length = lengthOf(job);
  return { low: Math.max(job.earliest, job.notDoneBefore - length, since), high: Math.min(job.latest, before) - length };
}

/** Helpers in the order they are asked: by the job's roles, then the others; frying and tea people last, they have their own work. */
function asked(resources: Resources, job: Job): readonly (readonly Helper[])[] {
  const facts = factsOf(resources, job);
  return (facts.asked ??= groupsFor(resources, job));
}

function groupsFor(resources: Resources, job: Job): readonly (readonly Helper[])[] {
  // Setting up is for whoever of its roles can do it nearest to its time.
  const together = job.kind === 'setUp';
  const key = `${together ? 'together ' : ''}${job.roles.join('|')}`;
  const known = resources.asked.get(key);
  if (known !== undefined) return known;
  const groups: Helper[][] = [];
  const seen = new Set<Helper>();
  const take = (test: (h: Helper) => boolean): void => {
    const group = resources.helpers.filter((h) => !seen.has(h) && test(h));
    for (const h of group) seen.add(h);
    if (group.length > 0) groups.push(group);
  };
  if (together) take((h) => job.roles.some((role) => h.person.roles.includes(role)));
  for (const role of job.roles) take((h) => h.person.roles.includes(role));
  take((h) => !h.person.roles.includes('fryer') && !h.person.roles.includes('tea'));
  take(() => true);
  resources.asked.set(key, groups);
  return groups;
}

/** Best start of a job with one of these helpers: nearest to where it is wanted, then the less busy helper, then list order. */
function bestOf(resources: Resources, job: Job, group: readonly Helper[], range: Range): { start: number; helper: Helper } | null {
  let best: { start: number; helper: Helper } | null = null;
  // Nobody can do it nearer than here; whoever is busier than the one found here need not be asked.
  const nearest = job.towards === 'early' ? range.low : range.high;
  for (const helper of group) {
    if (best !== null && best.start === nearest && helper.booked >= best.helper.booked) continue;
    const start = startIn(job, claimsOf(resources, job, helper, true), range);
    if (start === null) continue;
    const gain = best === null ? 1 : job.towards === 'late' ? start - best.start : best.start - start;
    if (best === null || gain > 1e-9 || (gain > -1e-9 && helper.booked < best.helper.booked)) best = { start, helper };
  }
  return best;
}

function startIn(job: Job, claims: ReturnType<typeof claimsOf>, range: Range): number | null {
  if (range.high < range.low - 1e-9) return null;
  if (job.towards === 'early') return earliestStart(claims, range.low, range.high);
  const wanted = Math.max(range.low, range.high - job.spare);
  return latestStart(claims, range.low, wanted) ?? (job.spare > 0 ? earliestStart(claims, wanted, range.high) : null);
}

/** Books a placement and returns it. */
export function settleAt(resources: Resources, job: Job, start: number, helper: Helper | null, things: boolean, tooEarly = 0): Placed {
  book(claimsOf(resources, job, helper, things), start, 1);
  if (helper !== null) helper.booked += factsOf(resources, job).minutesOfHands;
  return { job, start, who: helper?.person.id ?? null, things, tooEarly, home: false };
}

/** Books a placement that was taken back, or takes back one that is booked. */
function bookPlaced(resources: Resources, p: Placed, sign: 1 | -1): void {
  const helper = resources.helpers.find((h) => h.person.id === p.who) ?? null;
  if (p.home && helper !== null) {
    book(homeClaims(resources, p.job, helper), p.start, sign);
    return;
  }
  book(claimsOf(resources, p.job, helper, p.things), p.start, sign);
  if (helper !== null) helper.booked += sign * factsOf(resources, p.job).minutesOfHands;
}

/** Gives back what a placement booked. */
export const takeBack = (resources: Resources, p: Placed): void => bookPlaced(resources, p, -1);

/** Books a placement again, exactly as it was. */
export const bookAgain = (resources: Resources, p: Placed): void => bookPlaced(resources, p, 1);

/** Gives a job that may lie outside everybody's hours to the household; hours are for the day of the event only. null when nobody is in the list or it does not fit. */
function placeAtHome(resources: Resources, job: Job, range: Range): Placed | null {
  const helper = household(resources);
  if (helper === null) return null;
  const claims = homeClaims(resources, job, helper);
  const start = job.kind === 'step'
    ? latestStart([...claims, ...nightClaims(resources, job)], range.low, Math.min(range.high, -1))
    : earliestStart(claims, range.low, range.high + resources.values.homeLater);
  if (start === null) return null;
  book(claims, start, 1);
  return { job, start, who: helper.person.id, things: true, tooEarly: 0, home: true };
}

/**
 * Places a job within a range of starts: with a helper of its roles, with any helper, by the household on a day before, without a helper, or, when the things it needs
 * are taken, at its time with nothing booked. Never more than one whole person or than the kitchen has is booked.
 */
export function place(resources: Resources, job: Job, range: Range): Placed {
  const { possible, hands } = factsOf(resources, job);
  if (possible && hands) {
    const inTime = placeWithSomebody(resources, job, range, range);
    if (inTime !== null) return inTime;
    // Soaking, freezing or thawing begun on a day before is the household's, as shopping is.
    const home = job.anyTime || job.kind === 'step' ? placeAtHome(resources, job, range) : null;
    if (home !== null) return home;
    const early = job.kind === 'step' ? placeWithSomebody(resources, job, { low: range.low - resources.values.tooEarly, high: range.high }, range) : null;
    if (early !== null) return early;
  }
  const alone = possible ? startIn(job, claimsOf(resources, job, null, true), range) : null;
  if (alone !== null) return settleAt(resources, job, alone, null, true);
  const at = job.towards === 'late' ? range.high : Math.max(range.low, job.earliest);
  return settleAt(resources, job, at, null, false);
}

/** The best start within `open` with a helper of the job's roles, else with any; null when nobody is free. What it is early against `range` is noted. */
function placeWithSomebody(resources: Resources, job: Job, open: Range, range: Range): Placed | null {
  for (const group of asked(resources, job)) {
    const best = bestOf(resources, job, group, open);
    if (best !== null) return settleAt(resources, job, best.start, best.helper, true, Math.max(0, range.low - best.start));
  }
  return null;
}
