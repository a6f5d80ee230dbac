import type { Event, OwnJob } from '../event';
import { changeItem } from './items';
import { ownJobs } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a job of the cook's own. */
export const changeOwnJob = (event: Event, id: string, patch: Patch<OwnJob>): EditResult => changeItem(event, ownJobs, id, patch);
