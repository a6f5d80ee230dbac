import type { Event } from '../event';
import { addWave } from './add-wave';
import { freshId } from './fresh-id';
import { settled } from './check';
import type { EditResult } from './types';

/**
 * Counts the helpers in among those who eat and drink: a wave of their own, as many adults as there are helpers, there from the first one's coming for the
 * mean of their hours. An ordinary wave from then on: it can be changed or removed. Without helpers nothing changes.
 * @param name of the wave.
 */
export function countHelpersIn(event: Event, name: string): EditResult {
  const { people } = event;
  const edit = { id: 'edit.helpersEat' } as const;
  if (people.length === 0) return settled(event, edit);
  const hours = people.map((p) => Math.min(2880, Math.max(1, p.to - p.from)));
  const stay = { shortest: Math.min(...hours), usual: Math.round(hours.reduce((sum, h) => sum + h, 0) / hours.length), longest: Math.max(...hours) };
  const [first, last] = [Math.min(...people.map((p) => p.from)), Math.max(...people.map((p) => p.from))];
  const added = addWave(event, { id: freshId(event.guests.waves, 'helpers'), name, from: first, to: last, counts: { adult: people.length }, stay });
  return 'event' in added ? { ...added, name: edit } : added;
}
