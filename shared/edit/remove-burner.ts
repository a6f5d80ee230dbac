import type { Event } from '../event';
import { removeItem } from './items';
import { burners } from './lists';
import type { EditResult } from './types';

/** Takes a burner out, unless a pan stands on it. */
export const removeBurner = (event: Event, id: string): EditResult =>
  removeItem(event, burners, id, event.kitchen.pans.filter((pan) => pan.burner === id).map((pan) => pan.name));
