import type { Event } from '../event';
import type { Sheet } from './types';

/** The letter after: A -> B, Z -> AA, AZ -> BA. */
export function nextLetter(letter: string): string {
  const last = letter.codePointAt(letter.length - 1) ?? 64;
  if (last < 90) return letter.slice(0, -1) + String.fromCodePoint(last + 1);
  return letter.length === 1 ? 'AA' : `${nextLetter(letter.slice(0, -1))}A`;
}

/** Which version a print is: its letter, the letter it replaces, and whether this very content was printed before. */
export interface SheetVersion {
  readonly version: string;
  readonly replaces: string | null;
  readonly issued: boolean;
}

const rank = (letter: string): number => Array.from(letter).reduce((sum, c) => sum * 26 + (c.codePointAt(0) ?? 64) - 64, 0);

/** A line of the event file: one sheet as it was printed. */
export type Print = Event['issuedSheets'][number];

/** Prints of one sheet, oldest letter first. A line without an id, as old files have it, stands for every sheet of its kind. */
export const printsOf = (event: Event, sheet: Pick<Sheet, 'kind' | 'id'>): readonly Print[] =>
  event.issuedSheets.filter((s) => s.sheet === sheet.kind && (s.id === undefined || s.id === sheet.id)).sort((a, b) => rank(a.version) - rank(b.version));

/**
 * The version of one sheet: the latest printed letter while the content is the same, else the next one.
 * An event that went back to an earlier state gets a new letter all the same, because a newer paper hangs on the wall.
 * @param ofKind fingerprint of all sheets of the kind together, for lines without an id.
 */
export function versionOf(event: Event, sheet: Pick<Sheet, 'kind' | 'id' | 'fingerprint'>, ofKind = sheet.fingerprint): SheetVersion {
  const printed = printsOf(event, sheet);
  const latest = printed.at(-1);
  if (latest === undefined) return { version: 'A', replaces: null, issued: false };
  if (latest.fingerprint !== (latest.id === undefined ? ofKind : sheet.fingerprint)) return { version: nextLetter(latest.version), replaces: latest.version, issued: false };
  return { version: latest.version, replaces: printed.findLast((s) => s.version !== latest.version)?.version ?? null, issued: true };
}
