import type { Event } from '../event';
import type { SheetKind } from './types';

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

/**
 * The version of a sheet kind: the latest printed letter while the content is the same, else the next one.
 * An event that went back to an earlier state gets a new letter all the same, because a newer paper hangs on the wall.
 */
export function versionOf(event: Event, kind: SheetKind, fingerprint: string): SheetVersion {
  const printed = event.issuedSheets.filter((s) => s.sheet === kind).sort((a, b) => rank(a.version) - rank(b.version));
  const latest = printed.at(-1);
  if (latest === undefined) return { version: 'A', replaces: null, issued: false };
  if (latest.fingerprint !== fingerprint) return { version: nextLetter(latest.version), replaces: latest.version, issued: false };
  return { version: latest.version, replaces: printed.findLast((s) => s.version !== latest.version)?.version ?? null, issued: true };
}
