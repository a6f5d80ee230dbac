import { minutes, type Minutes } from './brands';

/** Minutes in a day. */
export const minutesPerDay = 1440;

/** A clock reading split for display: which day relative to the event's (0 the day itself, -1 the day before), hour 0-23, minute 0-59. */
export interface ClockParts {
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Splits minutes from the event's midnight. Fractions of a minute are rounded to the nearest minute. */
export function clockParts(at: Minutes): ClockParts {
  const whole = Math.round(at);
  const day = Math.floor(whole / minutesPerDay);
  const inDay = whole - day * minutesPerDay;
  return { day, hour: Math.floor(inDay / 60), minute: inDay % 60 };
}

/**
 * Reads what a cook types: `9`, `930`, `9:30`, `9.30`, `9:30 pm`, `21:30`, `25:10` (past midnight, up to 47:59).
 * Returns minutes from midnight, or null when it is not a time.
 */
export function parseClock(text: string): Minutes | null {
  const match = /^\s*(\d{1,2})(?:[:.h\s]?(\d{2}))?\s*(am|pm|a|p)?\s*$/i.exec(text);
  if (match === null) return null;
  let hour = Number(match[1]);
  const minute = match[2] === undefined ? 0 : Number(match[2]);
  const half = match[3]?.toLowerCase()[0];
  if (minute > 59 || hour > 47) return null;
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half === 'p' ? 12 : 0);
  }
  return minutes(hour * 60 + minute);
}
