import { lengthOf, type Placed } from './job';
import { book, claimsOf, type Helper, type Resources } from './resources';

/**
 * Minutes a job alone could start later: until its window closes, a job waiting for it starts, or its helper or a thing it needs is
 * wanted elsewhere. Whole minutes, 0 = cannot slip. Jobs at the oil do not slip.
 */
export function slackOf(resources: Resources, p: Placed, helpers: ReadonlyMap<string, Helper>, firstWaiting: number): number {
  if (p.job.kind === 'fry' || p.job.kind === 'watchOil' || p.job.kind === 'heatOil') return 0;
  const end = p.start + lengthOf(p.job);
  let room = Math.min(p.job.latest, firstWaiting) - end;
  if (room <= 0) return 0;
  const claims = claimsOf(resources, p.job, p.who === null ? null : helpers.get(p.who) ?? null, p.things);
  book(claims, p.start, -1);
  for (const c of claims) {
    const clash = c.profile.conflict(p.start + c.from, p.start + c.to + room, c.amount);
    if (clash !== null) room = Math.min(room, clash.from - (p.start + c.to));
  }
  book(claims, p.start, 1);
  return Math.max(0, Math.floor(room + 1e-9));
}
