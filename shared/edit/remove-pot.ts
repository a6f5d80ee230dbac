import type { Event } from '../event';
import { removeItem } from './items';
import { pots } from './lists';
import type { EditResult } from './types';

/** Takes a pot out. */
export const removePot = (event: Event, id: string): EditResult => removeItem(event, pots, id);
