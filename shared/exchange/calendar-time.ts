import { dayNumber, dayOfNumber, calendarDay } from '../words';

const secondsPerDay = 86_400;
const two = (n: number): string => String(n).padStart(2, '0');

/** Wall-clock seconds since 1970-01-01 00:00 of a minute of a day, as if every day had 24 hours. */
export const wallSeconds = (day: string, minute: number): number => dayNumber(calendarDay(day)) * secondsPerDay + Math.round(minute * 60);

/** Date and time as `YYYYMMDDTHHMMSS`. Source: RFC 5545, section 3.3.5. */
export function stampOf(wall: number): string {
  const days = Math.floor(wall / secondsPerDay);
  const { year, month, dayOfMonth } = dayOfNumber(days);
  const rest = wall - days * secondsPerDay;
  return `${String(year).padStart(4, '0')}${two(month)}${two(dayOfMonth)}T${two(Math.floor(rest / 3600))}${two(Math.floor(rest / 60) % 60)}${two(rest % 60)}`;
}

/** The inverse of `stampOf`, with or without the sign of UTC; null when the text is no such time. */
export function wallOf(stamp: string): number | null {
  const found = /^(\d{4})(\d{2})(\d{2})T(\d{2})(\d{2})(\d{2})Z?$/.exec(stamp);
  if (found === null) return null;
  const [year = 0, month = 1, dayOfMonth = 1, hours = 0, minutes = 0, seconds = 0] = found.slice(1).map(Number);
  return dayNumber({ year, month, dayOfMonth }) * secondsPerDay + hours * 3600 + minutes * 60 + seconds;
}

/** Seconds a time zone is ahead of UTC at a moment, given in seconds since 1970-01-01 UTC. */
export type Ahead = (utcSeconds: number) => number;

/** The time-zone database's answer for a zone; null when it does not know the zone. */
export function aheadOf(zone: string): Ahead | null {
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat('en-US', { timeZone: zone, calendar: 'gregory', numberingSystem: 'latn', hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit' });
  } catch {
    return null;
  }
  return (utcSeconds) => {
    const parts = new Map(format.formatToParts(utcSeconds * 1000).map((p) => [p.type, Number(p.value)]));
    const get = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
    const days = dayNumber({ year: get('year'), month: get('month'), dayOfMonth: get('day') });
    return days * secondsPerDay + get('hour') * 3600 + get('minute') * 60 + get('second') - utcSeconds;
  };
}

/** A moment at which a zone's clocks are changed. */
export interface ClockChange {
  /** Seconds since 1970-01-01 UTC. */
  readonly at: number;
  /** Seconds ahead of UTC before and from then on. */
  readonly before: number;
  readonly after: number;
}

/** Clock changes between two moments, in order, found day by day and then to the second. Unit: seconds since 1970-01-01 UTC. */
export function clockChanges(ahead: Ahead, from: number, to: number): ClockChange[] {
  const changes: ClockChange[] = [];
  for (let low = from; low < to; low += secondsPerDay) {
    const high = Math.min(to, low + secondsPerDay);
    const [before, after] = [ahead(low), ahead(high)];
    if (before === after) continue;
    let [a, b] = [low, high];
    while (b - a > 1) {
      const middle = Math.floor((a + b) / 2);
      if (ahead(middle) === before) a = middle;
      else b = middle;
    }
    changes.push({ at: b, before, after });
  }
  return changes;
}
