import type { Event } from '../event';
import { removeItem } from './items';
import { pans } from './lists';
import type { EditResult } from './types';

/** Takes a pan out, and out of its fry station; a station without a pan goes too. */
export const removePan = (event: Event, id: string): EditResult => removeItem(event, pans, id, [], (e) => ({
  ...e,
  kitchen: {
    ...e.kitchen,
    stations: e.kitchen.stations.map((s) => (s.pans.includes(id) ? { ...s, pans: s.pans.filter((pan) => pan !== id) } : s)).filter((s) => s.pans.length > 0),
  },
}));
