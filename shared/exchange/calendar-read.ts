import type { CalendarEntry } from './calendar-entry';

/** Name and the rest of a content line, parameters with it: `DTSTART` and `;TZID=Europe/Berlin:20261212T072600`. */
function cut(line: string): readonly [string, string] {
  const at = line.search(/[:;]/);
  return at < 0 ? [line.toUpperCase(), ''] : [line.slice(0, at).toUpperCase(), line.slice(at)];
}

/** What stands behind the colon; the names read here have no quoted parameters. */
const value = (rest: string): string => rest.slice(rest.indexOf(':') + 1);

function entryOf(fields: ReadonlyMap<string, string>): CalendarEntry | null {
  const [uid, start, end] = [fields.get('UID'), fields.get('DTSTART'), fields.get('DTEND')];
  const sequence = Number(value(fields.get('SEQUENCE') ?? ':0'));
  if (uid === undefined || start === undefined || end === undefined || !Number.isInteger(sequence) || sequence < 0) return null;
  return {
    uid: value(uid), sequence, stamp: value(fields.get('DTSTAMP') ?? ':'), cancelled: value(fields.get('STATUS') ?? ':').toUpperCase() === 'CANCELLED', start, end,
    summary: value(fields.get('SUMMARY') ?? ':'), description: value(fields.get('DESCRIPTION') ?? ':'), trigger: fields.get('TRIGGER') ?? '',
  };
}

/** Entries of a calendar file that was written here before; null when the text is no calendar. An entry without an id or its times is left out. Source: RFC 5545, sections 3.1 and 3.6. */
export function readCalendar(text: string): readonly CalendarEntry[] | null {
  const lines = text.replaceAll(/\r?\n[ \t]/g, '').split(/\r?\n/);
  if (lines[0]?.trim().toUpperCase() !== 'BEGIN:VCALENDAR') return null;
  const entries: CalendarEntry[] = [];
  let fields: Map<string, string> | null = null;
  let alarm = false;
  for (const line of lines) {
    const [name, rest] = cut(line);
    const of = value(rest).trim().toUpperCase();
    if (name === 'BEGIN' && of === 'VEVENT') fields = new Map();
    else if (name === 'BEGIN' && of === 'VALARM') alarm = true;
    else if (name === 'END' && of === 'VALARM') alarm = false;
    else if (name === 'END' && of === 'VEVENT') {
      const entry = fields === null ? null : entryOf(fields);
      if (entry !== null) entries.push(entry);
      fields = null;
    } else if (fields !== null && (!alarm || name === 'TRIGGER') && !fields.has(name)) fields.set(name, rest);
  }
  return entries;
}
