import { dayOf, type Event, type JobChange } from '../event';
import { removeItem } from './items';
import { inDay, people } from './lists';
import type { EditResult } from './types';

/** A change without the helper who is gone; nothing when that was all it said. */
function without(id: string, change: JobChange): JobChange[] {
  if (change.who !== id) return [change];
  const { who: _who, ...rest } = change;
  return Object.keys(rest).length === 1 ? [] : [rest];
}

/** Takes a helper out; the jobs given to them are for whoever is free. */
export const removePerson = (event: Event, id: string): EditResult => removeItem(event, people, id, [], (e) =>
  (e.dayJobs === undefined ? e : inDay(e, { changes: dayOf(e).changes.flatMap((c) => without(id, c)) })));
