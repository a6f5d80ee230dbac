import { dayOf, type Event } from '../event';
import { removeItem } from './items';
import { inDay, ownJobs } from './lists';
import type { EditResult } from './types';

/** Takes a job of the cook's own out of the day, with what was laid down about it. */
export const removeOwnJob = (event: Event, id: string): EditResult => removeItem(event, ownJobs, id, [], (e) =>
  inDay(e, { changes: dayOf(e).changes.filter((c) => c.job !== `own/${id}` && !c.job.startsWith(`own/${id}/`)) }));
