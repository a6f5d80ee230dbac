import type { Claim } from '../measure';
import { lengthOf, type Job } from './job';
import { kitchenHas, profilesOf, type Helper, type JobFacts, type Resources } from './resources';

const none: readonly Claim[] = [];

function thingClaims(resources: Resources, job: Job): readonly Claim[] {
  if (job.stretches.every((s) => s.needs.length === 0)) return none;
  const claims: Claim[] = [];
  let from = 0;
  for (const stretch of job.stretches) {
    const to = from + stretch.minutes;
    for (const need of stretch.needs) {
      for (const profile of profilesOf(resources, need)) claims.push({ profile, amount: need.count, from, to });
      const power = resources.power.get(need.thing);
      if (power !== undefined) claims.push({ profile: power.profile, amount: power.watts, from, to });
    }
    from = to;
  }
  return claims;
}

/** What is known of a job. */
export function factsOf(resources: Resources, job: Job): JobFacts {
  const known = resources.facts.get(job);
  if (known !== undefined) return known;
  let minutesOfHands = 0;
  for (const s of job.stretches) minutesOfHands += s.minutes * s.attention;
  const facts: JobFacts = {
    length: lengthOf(job), hands: job.stretches.some((s) => s.attention > 0), minutesOfHands,
    possible: job.stretches.every((s) => s.needs.every((n) => kitchenHas(resources, n))), things: thingClaims(resources, job), withHelper: [], asked: null,
  };
  resources.facts.set(job, facts);
  return facts;
}

/** Claims of a job on things, and on a helper when one is given. */
export function claimsOf(resources: Resources, job: Job, helper: Helper | null, withThings: boolean): readonly Claim[] {
  const facts = factsOf(resources, job);
  if (helper === null) return withThings ? facts.things : none;
  if (!withThings) return handsOf(job, helper, []);
  const known = facts.withHelper[helper.at];
  if (known !== undefined) return known;
  const claims = handsOf(job, helper, [...facts.things]);
  facts.withHelper[helper.at] = claims;
  return claims;
}

function handsOf(job: Job, helper: Helper, claims: Claim[]): Claim[] {
  let from = 0;
  for (const stretch of job.stretches) {
    const to = from + stretch.minutes;
    if (stretch.attention > 0) claims.push({ profile: helper.busy, amount: stretch.attention, from, to });
    from = to;
  }
  return claims;
}
