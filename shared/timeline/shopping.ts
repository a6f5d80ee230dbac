import { lowest } from '../measure';
import { changedJobs } from './changed-jobs';
import { isOpen, type DayDraft } from './draft';
import { tripJob } from './house-jobs';
import type { Job, Placed } from './job';
import { place, rangeOf } from './place';
import { placePinned } from './pinned';
import type { OffJob } from './types';

/** Trips to the shops, placed before the recipe steps that need what they bring. */
export function placeShopping({ event, trips, resources }: DayDraft, steps: readonly Placed[]): { readonly placed: readonly Placed[]; readonly off: readonly OffJob[] } {
  if (trips.length === 0) return { placed: [], off: [] };
  const begins = new Map<string, number>();
  for (const { job: { about: { dish } }, start } of steps) if (dish !== undefined) begins.set(dish, Math.min(begins.get(dish) ?? start, start));
  const firstWork = (dishes: ReadonlySet<string>): number => lowest([...begins].flatMap(([dish, at]) => (dishes.has(dish) ? [at] : [])));
  const { jobs, off } = changedJobs(event, trips.map((trip) => tripJob(resources.values, trip, firstWork)));
  const open = (job: Job): Placed => place(resources, job, rangeOf(job, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY));
  return { placed: [...jobs.filter(isOpen).map(open), ...jobs.flatMap((job) => (job.laid?.at === undefined ? [] : [placePinned(resources, job, job.laid.at)]))], off };
}
