import { formatsFor, parseEvent } from '../../shared/event';
import type { Event } from '../../shared/event';
import { sayMessage } from '../../shared/words';
import type { Formats } from '../../shared/words';
import { plainFormats } from '../problem';
import { readFileText } from './read-file';
import { BadInput } from './terminal';
import type { Terminal } from './terminal';
import { tell } from './words';

/** Reads an event file; notes about it go to the terminal. @throws BadInput with every problem of the file on its own line. */
export async function readEventFile(path: string | undefined, terminal: Terminal): Promise<Event> {
  if (path === undefined) throw new BadInput(tell('command.needs-file'));
  const { text } = await readFileText(path);
  const parsed = parseEvent(text);
  if (!parsed.ok) {
    const lines = parsed.problems.map((problem) => tell('command.problem', { path: problem.path, message: sayMessage(plainFormats, problem.message) }));
    throw new BadInput([tell('command.not-read', { path }), ...lines].join('\n'));
  }
  for (const note of parsed.notes) terminal.err(sayMessage(plainFormats, note));
  return parsed.event;
}

/** How numbers and times of an event are written. */
export const formatsOf = (event: Event): Formats => formatsFor(event.preferences, event.day);
