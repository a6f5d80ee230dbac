import type { Claim } from '../measure';
import type { Job } from './job';
import { claimsOf } from './job-facts';
import type { Helper, Resources } from './resources';

/** Who does what lies outside everybody's hours: the household, which is the first cook of the list, else its first person. */
export const household = (resources: Resources): Helper | null =>
  resources.helpers.find((h) => h.person.roles.includes('cook')) ?? resources.helpers[0] ?? null;

/** What a job claims when the household does it: its things, and the hands of the first cook at home for every stretch that wants any. */
export const homeClaims = (resources: Resources, job: Job, helper: Helper): readonly Claim[] => [...claimsOf(resources, job, null, true), ...handsClaims(job, helper.atHome)];

/** Hands of a job are wanted by day: nobody gets up at night for it. */
export const nightClaims = (resources: Resources, job: Job): readonly Claim[] => handsClaims(job, resources.night);

function handsClaims(job: Job, profile: Claim['profile']): Claim[] {
  const claims: Claim[] = [];
  let from = 0;
  for (const stretch of job.stretches) {
    const to = from + stretch.minutes;
    if (stretch.attention > 0) claims.push({ profile, amount: 1, from, to });
    from = to;
  }
  return claims;
}
