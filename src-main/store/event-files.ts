import { readFile, stat } from 'node:fs/promises';
import { extname, isAbsolute } from 'node:path';
import { HostProblem } from '../problem';
import { realFile, saveAtomically } from './atomic-save';
import type { SaveOptions } from './atomic-save';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { InTurn } from './in-turn';
import { largestFileBytes, readText } from './read-text';
import type { ReadText } from './read-text';
import { refuseChanged } from './seen';

// Saves follow one another as they were asked for, and then by the file they mean: a file and a link to it are one.
const [asked, turns] = [new InTurn(), new InTurn()];
const inTurn = <T>(path: string, calls: FileCalls, job: () => Promise<T>): Promise<T> =>
  asked.run(path, async () => turns.run(await realFile(path, calls).catch(() => path), job));
const eventEndings: readonly string[] = ['.brimful'];
const exportEndings: readonly string[] = ['.pdf', '.html', '.csv', '.txt', '.ics'];

/** Reads an event file. @throws HostProblem */
export function openEvent(path: string): Promise<ReadText> {
  checkPath(path, [...eventEndings, '.bak', '.json']);
  return readText(path);
}

/** What the save of an event file may be told. */
export interface EventSaveOptions extends Omit<SaveOptions, 'backup'> {
  /** The file last seen was not there any more, so it was written anew. */
  readonly wasGone?: () => void;
}

/**
 * Saves an event file, keeping the version before as `.bak`.
 * @param expect the modification time last seen (milliseconds), or null to overwrite whatever is there
 * A file that holds this text already is left as it is, and so is its `.bak`. One that is gone is written anew: the work on disk twice is better than not at all.
 * @throws HostProblem `changed-outside` when the file is newer or older than expected; nothing is written then
 */
export function saveEvent(path: string, text: string, expect: number | null, options: EventSaveOptions = {}): Promise<number> {
  checkPath(path, eventEndings);
  // What could not be opened again is not saved.
  if (Buffer.byteLength(text) > largestFileBytes) throw HostProblem.of('host.too-large', { path, megabytes: largestFileBytes / 1_000_000 });
  return inTurn(path, options.calls ?? diskCalls, async () => {
    const there = await modifiedOf(path);
    refuseChanged(path, expect ?? 'whatever', there);
    // Saved twice in a row, the version before is still worth more than a second copy of this one.
    if (there !== null && (await holds(path, text))) return there;
    const modified = await saveAtomically(path, text, { ...options, backup: true });
    if (expect !== null && there === null) options.wasGone?.();
    return modified;
  });
}

async function holds(path: string, text: string): Promise<boolean> {
  try {
    return (await readFile(path, 'utf8')) === text;
  } catch {
    return false;
  }
}

/** Writes a sheet or an exported table. Only endings of documents: a face must not be able to write programs. @throws HostProblem */
export async function writeExport(path: string, content: string | Uint8Array, calls: FileCalls = diskCalls): Promise<void> {
  checkPath(path, exportEndings);
  await inTurn(path, calls, () => saveAtomically(path, content, { calls }));
}

/** Text of a calendar file; null when there is none. @throws HostProblem when it is no calendar file, or cannot be read. */
export async function readCalendarFile(path: string): Promise<string | null> {
  checkPath(path, ['.ics']);
  return (await modifiedOf(path)) === null ? null : (await readText(path)).text;
}

/** When a file was last changed, in milliseconds; null when it is not there. */
export async function modifiedOf(path: string): Promise<number | null> {
  try {
    return (await stat(path)).mtimeMs;
  } catch {
    return null;
  }
}

function checkPath(path: string, endings: readonly string[]): void {
  if (!isAbsolute(path) || path.includes('\0')) throw HostProblem.of('host.not-absolute', { path });
  if (!endings.includes(extname(path).toLowerCase())) throw HostProblem.of('host.wrong-ending', { path, endings: endings.join(', ') });
}
