import type { Dispenser, Event } from '../event';
import { removeItem } from './items';
import { dishes } from './lists';
import type { EditResult } from './types';

function emptied(dispenser: Dispenser, dish: string): Dispenser {
  if (dispenser.dish !== dish) return dispenser;
  const { dish: _, ...rest } = dispenser;
  return rest;
}

/** Takes a dish off the menu, out of the fry stations and out of the flasks that held it. Its recipe stays. */
export const removeDish = (event: Event, id: string): EditResult => removeItem(event, dishes, id, [], (e) => ({
  ...e,
  kitchen: {
    ...e.kitchen,
    stations: e.kitchen.stations.map((s) => (s.dishes.includes(id) ? { ...s, dishes: s.dishes.filter((dish) => dish !== id) } : s)),
    dispensers: e.kitchen.dispensers.map((d) => emptied(d, id)),
  },
}));
