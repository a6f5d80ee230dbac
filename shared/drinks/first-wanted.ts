import type { Event } from '../event';
import type { DishPlan } from '../menu';

/** Whole minute from which somebody could want a drink: doors open, guests there and the drink out; never after its first cup. */
export function firstWanted(event: Event, dish: DishPlan, firstServed: number): number {
  const served = event.menu.dishes.find((d) => d.id === dish.id)?.served;
  if (served === undefined || served.kind === 'fixed') return Math.floor(firstServed);
  const arrival = event.guests.waves.reduce((first, w) => Math.min(first, w.from), Number.POSITIVE_INFINITY);
  const out = served.kind === 'between' ? served.from : event.opensAt;
  return Math.floor(Math.min(firstServed, Math.max(arrival, out)));
}
