import type { Event } from '../event';
import { removeItem } from './items';
import { stations } from './lists';
import type { EditResult } from './types';

/** Takes a fry station out; its pans stay. */
export const removeStation = (event: Event, id: string): EditResult => removeItem(event, stations, id);
