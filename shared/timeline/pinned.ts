import { lengthOf, type Job, type Placed } from './job';
import { homeClaims, household } from './household-claims';
import { settleAt } from './place';
import { claimsOf } from './job-facts';
import { book, type Helper, type Resources } from './resources';
import type { Claim } from '../measure';

const free = (claims: readonly Claim[], start: number): boolean => claims.every((c) => c.profile.conflict(start + c.from, start + c.to, c.amount) === null);

const needsSomebody = (job: Job): boolean => job.stretches.some((s) => s.attention > 0);

/** Who is asked for a job at its minute: whoever it was given to, then its roles in order, then the others. */
function askedFor(resources: Resources, job: Job): readonly Helper[] {
  const roles = [...job.roles, ...(job.laid?.roles ?? [])];
  const rank = (h: Helper): number => { const at = roles.findIndex((role) => h.person.roles.includes(role)); return at < 0 ? roles.length : at; };
  return resources.helpers.map((helper, at) => ({ helper, at, rank: rank(helper) })).toSorted((a, b) => a.rank - b.rank || a.helper.booked - b.helper.booked || a.at - b.at).map((x) => x.helper);
}

/** Places a job at the minute it was pinned to, whatever is in its way: with hands and things where they are free, else without. */
export function placePinned(resources: Resources, job: Job, at: number): Placed {
  const helpers = needsSomebody(job) ? askedFor(resources, job) : [];
  if (job.anyTime || at < 0) {
    const named = resources.helpers.find((h) => h.person.id === job.laid?.who) ?? household(resources);
    if (named !== null && needsSomebody(job)) {
      const claims = homeClaims(resources, job, named);
      if (free(claims, at)) {
        book(claims, at, 1);
        return { job, start: at, who: named.person.id, things: true, tooEarly: 0, home: true };
      }
    }
  }
  for (const things of [true, false]) {
    const helper = helpers.find((h) => free(claimsOf(resources, job, h, things), at));
    if (helper !== undefined) return settleAt(resources, job, at, helper, things);
    if (!needsSomebody(job) && free(claimsOf(resources, job, null, things), at)) return settleAt(resources, job, at, null, things);
  }
  return settleAt(resources, job, at, null, free(claimsOf(resources, job, null, true), at));
}

/** The windows of the other jobs, so that what comes before a pinned job is done by then and what comes after it begins no sooner. */
export function aroundPinned(jobs: readonly Job[], pinned: readonly Pick<Placed, 'job' | 'start'>[]): Job[] {
  if (pinned.length === 0) return [...jobs];
  const starts = new Map(pinned.map((p) => [p.job.id, p]));
  const latest = new Map<string, number>();
  for (const p of pinned) for (const id of p.job.after) latest.set(id, Math.min(latest.get(id) ?? Number.POSITIVE_INFINITY, p.start));
  const earliest = new Map<string, number>();
  const byId = new Map(jobs.map((j) => [j.id, j]));
  const sinceOf = (job: Job, seen: readonly string[]): number => {
    const known = earliest.get(job.id);
    if (known !== undefined) return known;
    let since = job.earliest;
    for (const id of job.after) {
      const fixed = starts.get(id);
      const before = byId.get(id);
      if (fixed !== undefined) since = Math.max(since, fixed.start + lengthOf(fixed.job));
      else if (before !== undefined && !seen.includes(id)) {
        const start = sinceOf(before, [...seen, job.id]);
        if (start > before.earliest) since = Math.max(since, start + lengthOf(before));
      }
    }
    earliest.set(job.id, since);
    return since;
  };
  return jobs.map((job) => ({ ...job, earliest: sinceOf(job, []), latest: Math.min(job.latest, latest.get(job.id) ?? job.latest) }));
}
