import { contentLine } from './calendar-text';
import { clockChanges, stampOf, type Ahead } from './calendar-time';

const days = (n: number): number => n * 86_400;

const two = (n: number): string => String(n).padStart(2, '0');

const offset = (seconds: number): string => {
  const whole = Math.abs(Math.round(seconds));
  const rest = whole % 60;
  return `${seconds < 0 ? '-' : '+'}${two(Math.floor(whole / 3600))}${two(Math.floor(whole / 60) % 60)}${rest === 0 ? '' : two(rest)}`;
};

/**
 * The rules of a time zone for the weeks around a day, so that a calendar that does not know the zone still shows the right moment: the
 * offset in force before, and each change of the clocks. Source: RFC 5545, section 3.6.5.
 * @param from, to wall-clock seconds between which times of this zone are written.
 */
export function zoneLines(zone: string, ahead: Ahead, from: number, to: number): string {
  const since = from - days(2);
  // The larger of the offsets of a whole year is summer time, where there are two.
  const year = [0, 61, 122, 183, 244, 305].map((d) => ahead(since + days(d)));
  const least = Math.min(...year);
  const part = (start: string, before: number, after: number): string => {
    const kind = after > least ? 'DAYLIGHT' : 'STANDARD';
    return contentLine('BEGIN', kind) + contentLine('DTSTART', start) + contentLine('TZOFFSETFROM', offset(before)) + contentLine('TZOFFSETTO', offset(after)) + contentLine('END', kind);
  };
  const first = clockChanges(ahead, since - days(400), since).at(-1);
  const opening = first === undefined ? part('19700101T000000', ahead(since), ahead(since)) : part(stampOf(first.at + first.before), first.before, first.after);
  const changes = clockChanges(ahead, since, to + days(2)).map((c) => part(stampOf(c.at + c.before), c.before, c.after));
  return contentLine('BEGIN', 'VTIMEZONE') + contentLine('TZID', zone) + opening + changes.join('') + contentLine('END', 'VTIMEZONE');
}
