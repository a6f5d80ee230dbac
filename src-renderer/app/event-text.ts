import { newEvent as soundNewEvent, parseEvent, type Event } from '../../shared/event';
import type { Settings } from '../../shared/host';
import { catalogue } from '../../shared/words';
import { speakerOf, startFormats } from './speak';

export { serialiseEvent } from '../../shared/event';

const mostSentences = 5;

/** Reads the text of an event file and hands it on. @returns what is wrong with it, in words, or null. */
export function openEventText(text: string, opened: (event: Event, readOnly: boolean) => void): { readonly message: string; readonly mend?: string } | null {
  const parsed = parseEvent(text);
  const t = speakerOf(startFormats());
  if (parsed.ok) {
    opened(parsed.event, parsed.readOnly);
    return null;
  }
  const sentences = parsed.problems.map((p) => t.message(p.message));
  return { message: t('shell.cannotOpen'), mend: [...sentences.slice(0, mostSentences), ...(sentences.length > mostSentences ? [t('shell.moreProblems', { n: sentences.length - mostSentences })] : [])].join('\n') };
}

/** A new event for the given day, in the ways of this computer. */
export function newEvent(day: string, settings: Settings | null): Event {
  const id = `event-${crypto.randomUUID()}`;
  return soundNewEvent({
    id, title: catalogue['shell.newTitle'], day, timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    preferences: settings === null ? {} : { units: settings.units, clock: settings.clock, ...(settings.paper === null ? {} : { paper: settings.paper }) },
  });
}
