import { say } from '../../words';
import { minutesPerDay } from '../../measure';
import type { PrintedRow, SheetContext } from '../types';
import { clockInDay } from './by-day';
import { rowWords, type RowWords } from './row-words';
import type { DayRow } from './rows';
import { allWho, withWords } from './task-words';

/** A row of a day plan in words: what each of its columns says, and what a later print compares it with. */
export interface PrintedDayRow {
  readonly words: RowWords;
  /** The row itself. */
  readonly row: PrintedRow;
  /** Times named inside the row, each compared by itself: one bringing out among many, one batch of a stretch. */
  readonly entries: readonly PrintedRow[];
}

/** Where and with what; on the wall, pans and pots of a stretch or round are left to the fry and drinks sheets. */
export function withOf(row: DayRow, wall: boolean, context: SheetContext): string {
  const things = wall && row.kind !== 'job' ? '' : withWords(row.tasks, context);
  if (wall) return things;
  const where = [...new Set(row.tasks.flatMap((t) => t.station ?? []))].map(context.names.thing).join(', ');
  return [where, things].filter((x) => x !== '').join(', ');
}

/** When the hands of a row are free: the part that runs by itself is told in words. Minutes from the event's midnight. */
export const untilOf = (row: DayRow): number => (row.kind === 'job' ? (row.tasks[0]?.end ?? row.end) : row.end);

/** A row as it stands on paper. Rows of lists hold the list's times one by one, for a list is long and one of its times changes. */
export function printedDayRow(row: DayRow, wall: boolean, context: SheetContext): PrintedDayRow {
  const { formats: f } = context;
  const words = rowWords(row, wall, context);
  const entries = (words.entries ?? []).map((e): PrintedRow => ({ key: `${row.key}: ${e.key}`, name: words.title, cells: { entry: e.text } }));
  const list = row.kind === 'serve' || row.kind === 'wash' || row.kind === 'rest' || row.kind === 'cool';
  return {
    words, entries,
    row: {
      key: row.key, name: words.title,
      cells: {
        day: say(f, 'sheets.day.dayOf', { days: Math.floor(row.start / minutesPerDay) }),
        // First and last of a list are among its times.
        ...(list && entries.length > 0 ? {} : { start: clockInDay(f, row.start), until: clockInDay(f, untilOf(row)) }),
        ...(wall ? { who: allWho(row.tasks, context) } : { with: withOf(row, wall, context) }),
        more: entries.length > 0 ? '' : words.lines.join('; '),
      },
    },
  };
}

/** All rows of a sheet for the next print, the times inside them too. */
export const allPrinted = (rows: readonly PrintedDayRow[]): readonly PrintedRow[] => rows.flatMap((r) => [r.row, ...r.entries]);
