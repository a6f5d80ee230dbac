import { dayOf, mostJobChanges, type Event, type JobChange } from '../event';
import { settled } from './check';
import { inDay } from './lists';
import type { EditResult } from './types';

/** A job with the minute it is to keep. */
export interface HeldJob {
  readonly job: string;
  readonly at: number;
}

/** Holds jobs at their minute because they are on a paper on the wall (`printed`) or under way (`started`). What is pinned by hand, or under way, stays as it is. All of them are held or none: a paper held in part would not be noticed. */
export function holdJobs(event: Event, jobs: readonly HeldJob[], held: 'started' | 'printed'): EditResult {
  const changes = new Map(dayOf(event).changes.map((c) => [c.job, c]));
  for (const { job, at } of jobs) {
    const had: JobChange | undefined = changes.get(job);
    if (had?.at === undefined || had.held === 'printed') changes.set(job, { ...had, job, at: Math.round(at), held });
  }
  if (changes.size > mostJobChanges) return { problem: { id: 'day.edit.holdTooMany', params: { jobs: changes.size, most: mostJobChanges } }, path: 'dayJobs.changes' };
  return settled(inDay(event, { changes: [...changes.values()] }), { id: 'day.edit.hold', params: { jobs: jobs.length, held } });
}

/** Gives every job held for its paper back to the plan; pinned and started ones stay. */
export function letGoOfPrinted(event: Event): EditResult {
  const changes = dayOf(event).changes.flatMap((c): JobChange[] => {
    if (c.held !== 'printed') return [c];
    const { at: _at, held: _held, ...rest } = c;
    return Object.keys(rest).length === 1 ? [] : [rest];
  });
  return settled(inDay(event, { changes }), { id: 'day.edit.letGo' });
}
