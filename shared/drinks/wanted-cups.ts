import type { Event } from '../event';
import { minutes, type Series } from '../measure';
import type { DishPlan } from '../menu';

/**
 * Cups wanted in each minute. A drink served at one time is poured over some minutes around it, half before and half after, as fast as
 * its vessels are tapped: nobody fills a hundred cups in a minute. Cups in all are the dish's portions either way.
 * @param perMinute cups filled in a minute from one vessel, more than 0.
 */
export function wantedCups(event: Event, dish: DishPlan, vessels: number, perMinute: number): Series {
  const served = event.menu.dishes.find((d) => d.id === dish.id)?.served;
  if (served?.kind !== 'fixed') return dish.demand;
  const cups = dish.demand.values.reduce((a, b) => a + b, 0);
  const rate = Math.max(1, perMinute * Math.max(1, vessels));
  const length = Math.max(1, Math.ceil(cups / rate - 1e-9));
  const first = dish.firstServed ?? dish.demand.fromMinute;
  return { fromMinute: minutes(Math.floor(first) - Math.floor(length / 2)), values: Array.from({ length }, (_, i) => Math.min(rate, cups - i * rate)) };
}
