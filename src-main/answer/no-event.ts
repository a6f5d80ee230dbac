import { parseEvent } from '../../shared/event';
import { sayMessage } from '../../shared/words';
import { HostProblem, plainFormats } from '../problem';

/** A text that could not be opened as an event again is never written, least of all over a good one. @throws HostProblem `no-event-text` with the first thing that is wrong */
export function refuseNoEvent(path: string, text: string): void {
  const read = parseEvent(text);
  const [wrong] = read.ok ? [] : read.problems;
  if (wrong !== undefined) throw HostProblem.of('host.no-event-text', { path, what: sayMessage(plainFormats, wrong.message) });
}
