import { minutesPerDay } from '../../measure';
import type { Formats } from '../../words';

/** Jobs or rows grouped by the day they start on, relative to the event's day, in order. */
export function byDay<Row extends { readonly start: number }>(rows: readonly Row[]): readonly { readonly day: number; readonly rows: readonly Row[] }[] {
  const days = new Map<number, Row[]>();
  for (const row of rows) {
    const day = Math.floor(row.start / minutesPerDay);
    days.set(day, [...(days.get(day) ?? []), row]);
  }
  return [...days].sort(([a], [b]) => a - b).map(([day, own]) => ({ day, rows: own }));
}

/** A clock time without its day, for a table whose heading names the day. Minutes from the event's midnight. */
export const clockInDay = (f: Formats, at: number): string => f.clock(at - Math.floor(at / minutesPerDay) * minutesPerDay);
