import { dayOf, type DayOrder, type Event } from '../event';
import type { Order } from './lay-out';

/** An order as an event keeps it. Nudges of nothing are left out; by job, so that the same order is written the same way. */
export const keptOrder = ({ setUpFirst, restsFirst, relief, nudge }: Order): DayOrder => ({
  setUpFirst, restsFirst, relief: relief ?? 'none',
  nudges: [...(nudge ?? [])].filter(([, by]) => by !== 0).map(([job, by]) => ({ job, by })).toSorted((a, b) => (a.job < b.job ? -1 : 1)),
});

/** The order the cook has taken for the day; null when she has taken none. */
export function chosenOrder(event: Event): Order | null {
  const { order } = dayOf(event);
  if (order === undefined) return null;
  return { setUpFirst: order.setUpFirst, restsFirst: order.restsFirst, relief: order.relief === 'none' ? null : order.relief, nudge: new Map(order.nudges.map((n) => [n.job, n.by])) };
}
