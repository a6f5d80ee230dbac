import type { Event } from '../event';
import { removeItem } from './items';
import { dispensers } from './lists';
import type { EditResult } from './types';

/** Takes a flask or urn out. */
export const removeDispenser = (event: Event, id: string): EditResult => removeItem(event, dispensers, id);
