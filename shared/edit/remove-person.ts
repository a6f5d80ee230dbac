import type { Event } from '../event';
import { removeItem } from './items';
import { people } from './lists';
import type { EditResult } from './types';

/** Takes a helper out. */
export const removePerson = (event: Event, id: string): EditResult => removeItem(event, people, id);
