import type { Plan } from '../plan';
import type { Task } from '../timeline';
import { say, sayMessage, type Formats } from '../words';
import { revised, type CalendarEntry, type FreshEntry } from './calendar-entry';
import { contentLine, rawLine, textValue } from './calendar-text';
import { aheadOf, stampOf, wallOf, wallSeconds } from './calendar-time';
import { zoneLines } from './calendar-zone';

/** What goes into a calendar file. */
export interface CalendarWish {
  /** When it is written: seconds since 1970-01-01 UTC. */
  readonly writtenAt: number;
  /** One helper's jobs by id; everybody's when left out. */
  readonly person?: string;
  /** Minutes before each job at which the calendar reminds; none when left out. */
  readonly remindMinutes?: number;
  /** What was written before for the same calendar: revisions are counted on from it, and what is gone is cancelled. */
  readonly before?: readonly CalendarEntry[];
}

/** Signs that may stand in an id of an entry. */
const plainId = (id: string): string => id.replaceAll(/[^A-Za-z0-9/_.-]/g, '-');

/** What is written of a job: who does it, with what, what it has to say. */
function descriptionOf(task: Task, plan: Plan, f: Formats): string {
  const names = task.who.map((id) => plan.event.people.find((p) => p.id === id)?.name ?? id);
  const own = [...plan.event.kitchen.burners, ...plan.event.kitchen.pots, ...plan.event.kitchen.pans];
  const things = task.needs.flatMap(({ thing }) => own.find((o) => thing.endsWith(`:${o.id}`))?.name ?? []);
  return [
    ...(names.length > 0 ? [say(f, 'calendar.who', { names })] : []),
    ...(things.length > 0 ? [say(f, 'calendar.with', { things: [...new Set(things)] })] : []),
    ...(task.note === undefined ? [] : [sayMessage(f, task.note)]),
  ].join('\n');
}

/** Jobs a calendar holds: those with something to do; what runs by itself is not an appointment. */
export const calendarTasks = (plan: Plan, person?: string): readonly Task[] =>
  plan.day.tasks.filter((t) => t.attention > 0 && (person === undefined || t.who.includes(person)));

/** The time zone a start or end is written in; null for UTC and for times that count where they are read. */
const zoneOf = (time: string): string | null => /^;TZID=([^:]+):/.exec(time)?.[1] ?? null;

/** The rules of each time zone that these entries name; one that the time-zone database does not know has none. */
function zonesOf(entries: readonly CalendarEntry[]): string {
  const walls = new Map<string, number[]>();
  for (const time of entries.flatMap((e) => [e.start, e.end])) {
    const zone = zoneOf(time);
    const wall = wallOf(time.slice(time.indexOf(':') + 1));
    if (zone !== null && wall !== null) walls.set(zone, [...(walls.get(zone) ?? []), wall]);
  }
  return [...walls].map(([zone, times]) => {
    const ahead = aheadOf(zone);
    return ahead === null ? '' : zoneLines(zone, ahead, times.reduce((a, b) => Math.min(a, b)), times.reduce((a, b) => Math.max(a, b)));
  }).join('');
}

/**
 * The jobs of the day as entries with their revisions: each has an id that stays the same (one helper's entries have ids of their own, since the
 * same job may go to another helper). Times are those of the wall clock of the event, on a day with a clock change too. A zone the time-zone
 * database does not know is left out: the times then count where they are read.
 */
export function calendarEntries(plan: Plan, f: Formats, { writtenAt, person, remindMinutes, before = [] }: CalendarWish): readonly CalendarEntry[] {
  const { event } = plan;
  const known = aheadOf(event.timeZone) !== null;
  const ending = `@${plainId(event.id)}.event`;
  const forOne = person === undefined ? '' : `/for-${plainId(person)}`;
  // What was written of another event, or for other hands, is not this file's to cancel.
  const mine = before.filter((e) => e.uid.endsWith(ending) && (/\/for-[^/]*$/.exec(e.uid.slice(0, -ending.length))?.[0] ?? '') === forOne);
  const at = (minute: number): string => {
    const stamp = stampOf(wallSeconds(event.day, minute));
    if (!known) return `:${stamp}`;
    return event.timeZone === 'UTC' ? `:${stamp}Z` : `;TZID=${event.timeZone}:${stamp}`;
  };
  const fresh = calendarTasks(plan, person).map((t): FreshEntry => ({
    uid: `${plainId(t.id)}${forOne}${ending}`,
    start: at(t.start), end: at(t.end), summary: textValue(sayMessage(f, t.name)), description: textValue(descriptionOf(t, plan, f)),
    trigger: remindMinutes === undefined ? '' : `:-PT${Math.max(0, Math.round(remindMinutes))}M`,
  }));
  return revised(fresh, mine, `${stampOf(Math.floor(writtenAt))}Z`);
}

const entryLines = (e: CalendarEntry): string => contentLine('BEGIN', 'VEVENT')
  + contentLine('UID', e.uid) + contentLine('DTSTAMP', e.stamp) + contentLine('SEQUENCE', String(e.sequence)) + contentLine('STATUS', e.cancelled ? 'CANCELLED' : 'CONFIRMED')
  + rawLine('DTSTART', e.start) + rawLine('DTEND', e.end) + contentLine('SUMMARY', e.summary)
  + (e.description === '' ? '' : contentLine('DESCRIPTION', e.description))
  + (e.trigger === '' ? '' : contentLine('BEGIN', 'VALARM') + contentLine('ACTION', 'DISPLAY') + contentLine('DESCRIPTION', e.summary) + rawLine('TRIGGER', e.trigger) + contentLine('END', 'VALARM'))
  + contentLine('END', 'VEVENT');

/** Entries as an iCalendar file, with the rules of their time zones. Source: RFC 5545. */
export function calendarFile(title: string, entries: readonly CalendarEntry[]): string {
  return contentLine('BEGIN', 'VCALENDAR') + contentLine('VERSION', '2.0') + contentLine('PRODID', '-//Brimful//Plan of the day//EN') + contentLine('CALSCALE', 'GREGORIAN')
    + contentLine('NAME', textValue(title)) + zonesOf(entries) + entries.map(entryLines).join('') + contentLine('END', 'VCALENDAR');
}

/**
 * The day as an iCalendar file that a calendar reads again and again: with what was written before, an entry that is another has a higher
 * revision, one that is the same is byte for byte the same, one that is gone is cancelled. It has no method, for it comes from no organiser.
 */
export const planCalendar = (plan: Plan, f: Formats, wish: CalendarWish): string => calendarFile(plan.event.title, calendarEntries(plan, f, wish));
