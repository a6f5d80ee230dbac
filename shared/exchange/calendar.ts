import type { Plan } from '../plan';
import type { Task } from '../timeline';
import { say, sayMessage, type Formats } from '../words';
import { contentLine, textValue } from './calendar-text';
import { aheadOf, stampOf, wallSeconds } from './calendar-time';
import { zoneLines } from './calendar-zone';

/** What goes into a calendar file. */
export interface CalendarWish {
  /** When it is written: seconds since 1970-01-01 UTC. A later file updates an earlier one in the same calendar. */
  readonly writtenAt: number;
  /** One helper's jobs by id; everybody's when left out. */
  readonly person?: string;
  /** Minutes before each job at which the calendar reminds; none when left out. */
  readonly remindMinutes?: number;
}

/** Start of the count of versions, 2020-01-01 UTC, so that the number stays small. Unit: seconds since 1970. */
const countFrom = 1_577_836_800;

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

/**
 * The day as an iCalendar file: one entry for each job, in the time zone of the event with its rules, each with an id that stays the same
 * and a version that rises, so that reading a later file moves the entries and makes no second ones. Times are those of the wall clock, on
 * a day with a clock change too. A zone the time-zone database does not know is left out: the times then count where they are read.
 * Source: RFC 5545.
 */
export function planCalendar(plan: Plan, f: Formats, { writtenAt, person, remindMinutes }: CalendarWish): string {
  const { event } = plan;
  const tasks = calendarTasks(plan, person);
  const ahead = aheadOf(event.timeZone);
  const walls = tasks.flatMap((t) => [wallSeconds(event.day, t.start), wallSeconds(event.day, t.end)]);
  const zone = ahead !== null && event.timeZone !== 'UTC' && tasks.length > 0
    ? zoneLines(event.timeZone, ahead, walls.reduce((a, b) => Math.min(a, b)), walls.reduce((a, b) => Math.max(a, b))) : '';
  const at = (name: string, minute: number): string => {
    const stamp = stampOf(wallSeconds(event.day, minute));
    if (ahead === null) return contentLine(name, stamp);
    return event.timeZone === 'UTC' ? contentLine(name, `${stamp}Z`) : contentLine(`${name};TZID=${event.timeZone}`, stamp);
  };
  const written = stampOf(Math.floor(writtenAt));
  const version = Math.max(0, Math.floor((writtenAt - countFrom) / 60));
  const entry = (t: Task): string => {
    const name = textValue(sayMessage(f, t.name));
    const more = descriptionOf(t, plan, f);
    return contentLine('BEGIN', 'VEVENT')
      + contentLine('UID', `${plainId(t.id)}@${plainId(event.id)}.event`) + contentLine('DTSTAMP', `${written}Z`) + contentLine('SEQUENCE', String(version))
      + at('DTSTART', t.start) + at('DTEND', t.end) + contentLine('SUMMARY', name)
      + (more === '' ? '' : contentLine('DESCRIPTION', textValue(more)))
      + (remindMinutes === undefined ? '' : contentLine('BEGIN', 'VALARM') + contentLine('ACTION', 'DISPLAY') + contentLine('DESCRIPTION', name)
        + contentLine('TRIGGER', `-PT${Math.max(0, Math.round(remindMinutes))}M`) + contentLine('END', 'VALARM'))
      + contentLine('END', 'VEVENT');
  };
  return contentLine('BEGIN', 'VCALENDAR') + contentLine('VERSION', '2.0') + contentLine('PRODID', '-//Brimful//Plan of the day//EN') + contentLine('CALSCALE', 'GREGORIAN')
    + contentLine('METHOD', 'PUBLISH') + contentLine('NAME', textValue(event.title)) + zone + tasks.map(entry).join('') + contentLine('END', 'VCALENDAR');
}
