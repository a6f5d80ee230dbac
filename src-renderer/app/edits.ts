import { readEvent, type Event, type Preferences } from '../../shared/event';
import type { Message } from '../../shared/words';
import type { EditResult } from './edit-result';

/** Puts a changed event forward, checked as a whole; the first thing that does not fit is the problem. */
export function proposed(event: Event, next: Event, name: Message): EditResult {
  if (next === event) return { ok: true, event, name };
  const read = readEvent(next);
  if (read.ok) return { ok: true, event: next, name };
  const first = read.problems[0];
  return first === undefined ? { ok: true, event: next, name } : { ok: false, problem: first.message };
}

/** Units, clock, paper, share of days to cover. */
export const setPreferences = (event: Event, part: Partial<Preferences>): EditResult =>
  proposed(event, { ...event, preferences: { ...event.preferences, ...part } }, { id: 'step.preferences' });
