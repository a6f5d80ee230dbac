import type * as z from 'zod';
import type { Event, ownJobSchema } from '../event';
import { addItem } from './items';
import { ownJobs } from './lists';
import type { EditResult } from './types';

/** Adds a job of the cook's own to the day. Times are minutes from the event's midnight. */
export const addOwnJob = (event: Event, job: z.input<typeof ownJobSchema>): EditResult => addItem(event, ownJobs, job);
