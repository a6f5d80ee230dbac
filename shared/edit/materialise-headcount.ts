import type { Event } from '../event';
import { invitedCounts } from '../guests';

/**
 * Writes a headcount set as a whole into the waves (Webster's method, as the plan spreads it) and takes the override away. The people
 * of every wave stay the same. Done before an edit of one wave's counts, which the override would otherwise spread over all waves.
 */
export function materialiseHeadcount(event: Event): Event {
  const { headcount, waves } = event.guests;
  if ((headcount.adults === null && headcount.children === null) || waves.length === 0) return event;
  const counts = invitedCounts(event);
  return {
    ...event,
    guests: {
      ...event.guests,
      headcount: { ...headcount, adults: null, children: null },
      waves: waves.map((wave, at) => ({ ...wave, counts: { ...wave.counts, ...counts[at] } })),
    },
  };
}
