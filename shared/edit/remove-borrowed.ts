import type { Event } from '../event';
import { removeItem } from './items';
import { borrowed } from './lists';
import type { EditResult } from './types';

/** Takes something off the borrow list. */
export const removeBorrowed = (event: Event, id: string): EditResult => removeItem(event, borrowed, id);
