import type { Borrowed, Event } from '../event';
import { changeItem } from './items';
import { borrowed } from './lists';
import type { EditResult, Patch } from './types';

/** Changes something borrowed: how many, from whom, whether it is here or has gone back. */
export const changeBorrowed = (event: Event, id: string, patch: Patch<Borrowed>): EditResult => changeItem(event, borrowed, id, patch);
