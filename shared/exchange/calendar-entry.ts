/** One job as a calendar holds it. All texts are as written in the file, escapes included, so that two files are compared as they are. */
export interface CalendarEntry {
  readonly uid: string;
  /** Revisions so far: 0 when first written, one more for each file in which the entry is another. Source: RFC 5545, section 3.8.7.4. */
  readonly sequence: number;
  /** When it last was revised, UTC, `YYYYMMDDTHHMMSSZ`. Source: RFC 5545, section 3.8.7.2, for files without a method. */
  readonly stamp: string;
  /** Written before, and not a job of the day any more. */
  readonly cancelled: boolean;
  /** What follows `DTSTART` and `DTEND`, with the time zone: `;TZID=Europe/Berlin:20261212T072600`. */
  readonly start: string;
  readonly end: string;
  readonly summary: string;
  /** Empty when there is nothing more to say. */
  readonly description: string;
  /** What follows `TRIGGER`; empty when nothing reminds. */
  readonly trigger: string;
}

/** An entry before its revision is known. */
export type FreshEntry = Omit<CalendarEntry, 'sequence' | 'stamp' | 'cancelled'>;

const parts = ['start', 'end', 'summary', 'description', 'trigger'] as const;
const same = (a: FreshEntry, b: FreshEntry): boolean => parts.every((part) => a[part] === b[part]);

/**
 * Entries with their revisions, from those written before: one that is the same keeps its number and its stamp, one that is another has the
 * next number; what is no job any more is cancelled, once, and stays in the file so that a calendar that missed it learns of it. Jobs first, then
 * what is cancelled.
 * @param stamp when this file is written, `YYYYMMDDTHHMMSSZ`.
 */
export function revised(now: readonly FreshEntry[], before: readonly CalendarEntry[], stamp: string): readonly CalendarEntry[] {
  const known = new Map(before.map((e) => [e.uid, e]));
  const wanted = new Set(now.map((e) => e.uid));
  const held = now.map((e): CalendarEntry => {
    const was = known.get(e.uid);
    if (was === undefined) return { ...e, sequence: 0, stamp, cancelled: false };
    return !was.cancelled && same(e, was) ? was : { ...e, sequence: was.sequence + 1, stamp, cancelled: false };
  });
  const gone = before.filter((e) => !wanted.has(e.uid)).map((e): CalendarEntry => (e.cancelled ? e : { ...e, trigger: '', sequence: e.sequence + 1, stamp, cancelled: true }));
  return [...held, ...gone.toSorted((a, b) => (a.uid < b.uid ? -1 : 1))];
}
