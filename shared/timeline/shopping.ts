import { lowest } from '../measure';
import { changedJobs } from './changed-jobs';
import { isOpen, type DayDraft } from './draft';
import { shopJobs } from './house-jobs';
import type { Job, Placed } from './job';
import { place, rangeOf } from './place';
import { placePinned } from './pinned';
import type { OffJob } from './types';

/** Trips to the shops, placed before the recipe steps that need what they bring. */
export function placeShopping({ event, inputs, resources, shops }: DayDraft, steps: readonly Placed[]): { readonly placed: readonly Placed[]; readonly off: readonly OffJob[] } {
  if (!shops) return { placed: [], off: [] };
  const firstWork = (dishes: ReadonlySet<string>): number =>
    lowest(steps.filter((p) => p.job.about.dish !== undefined && dishes.has(p.job.about.dish)).map((p) => p.start));
  const { jobs, off } = changedJobs(event, shopJobs(resources.values, inputs.buying, firstWork, event.day));
  const open = (job: Job): Placed => place(resources, job, rangeOf(job, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY));
  return { placed: [...jobs.filter(isOpen).map(open), ...jobs.flatMap((job) => (job.laid?.at === undefined ? [] : [placePinned(resources, job, job.laid.at)]))], off };
}
