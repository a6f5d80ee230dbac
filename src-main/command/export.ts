import { dayCsv, dayText, planCalendar, readCalendar } from '../../shared/exchange';
import type { CalendarEntry } from '../../shared/exchange';
import type { Event } from '../../shared/event';
import { plan } from '../../shared/plan';
import { readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import { readFileText } from './read-file';
import { BadInput, exits } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful export FILE --as calendar|table|text [--helper NAME] [--remind MINUTES] [--since OLD.ics]` */
export const exportCommand: Command = {
  usage: tell('command.usage.export'),
  run: async (args, terminal) => {
    const given = readOptions(args, { as: 'string', helper: 'string', remind: 'string', since: 'string' }, 1);
    const event = await readEventFile(given.files[0], terminal);
    const person = helperOf(event, given.text('helper'));
    const remind = reminder(given.text('remind'));
    const before = await writtenBefore(given.text('since'));
    const text = written(event, given.text('as'), person, remind, before);
    // The terminal ends the last line itself.
    terminal.out(text.replace(/\n$/, ''));
    return exits.ok;
  },
};

function written(event: Event, as: string | undefined, person: string | undefined, remindMinutes: number | undefined, before: readonly CalendarEntry[]): string {
  const [planned, formats] = [plan(event), formatsOf(event)];
  if (as === 'table') return dayCsv(planned, formats, person);
  if (as === 'text') return dayText(planned, formats, person);
  if (as !== 'calendar') throw new BadInput(tell('command.export.as'));
  return planCalendar(planned, formats, {
    writtenAt: Math.floor(new Date().getTime() / 1000), before, ...(person === undefined ? {} : { person }), ...(remindMinutes === undefined ? {} : { remindMinutes }),
  });
}

/** Entries of the file written last, so that revisions are counted on. @throws BadInput when it cannot be read or is no calendar. */
async function writtenBefore(path: string | undefined): Promise<readonly CalendarEntry[]> {
  if (path === undefined) return [];
  const entries = readCalendar((await readFileText(path)).text);
  if (entries === null) throw new BadInput(tell('command.export.since', { path }));
  return entries;
}

/** Id of a helper by name. @throws BadInput when there is none of that name. */
function helperOf(event: Event, name: string | undefined): string | undefined {
  if (name === undefined) return undefined;
  const found = event.people.find((p) => p.name.toLowerCase() === name.toLowerCase() || p.id === name);
  if (found === undefined) throw new BadInput(tell('command.export.helper', { name, names: event.people.map((p) => p.name) }));
  return found.id;
}

/** Minutes of the reminder. @throws BadInput when it is no whole number of minutes of a day. */
function reminder(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const minutes = Number(text);
  if (text.trim() === '' || !Number.isInteger(minutes) || minutes < 0 || minutes > 1440) throw new BadInput(tell('command.export.remind'));
  return minutes;
}
