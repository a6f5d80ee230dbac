import { call } from '../bridge';
import type { CallInput, Problem } from '../../shared/host';
import { sessionStore } from './session';

/** Ending of a text that other programs read. */
export type TextEnding = NonNullable<CallInput<'events.chooseSave'>['extension']>;

function fail(problem: Problem): null {
  sessionStore.set({ problem });
  return null;
}

/**
 * Writes a text for other programs where the cook wants it. `make` may look at what lies there already.
 * @returns where it went; null when the cook chose no place, or it could not be written: then the shell says why.
 */
export async function writeText(name: string, extension: TextEnding, make: (path: string) => Promise<string>): Promise<string | null> {
  const place = await call('events.chooseSave', { name, extension });
  if (!place.ok) return fail(place.problem);
  if (place.value.path === null) return null;
  const answer = await call('files.write', { path: place.value.path, text: await make(place.value.path) });
  return answer.ok ? answer.value.path : fail(answer.problem);
}

/** Text of the calendar file at a path; null when there is none, or it cannot be read. */
export async function calendarAt(path: string): Promise<string | null> {
  const answer = await call('files.readCalendar', { path });
  return answer.ok ? answer.value.text : null;
}
