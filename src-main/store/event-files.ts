import { readFile, stat } from 'node:fs/promises';
import { extname, isAbsolute } from 'node:path';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import type { SaveOptions } from './atomic-save';
import { InTurn } from './in-turn';
import { largestFileBytes, readText } from './read-text';
import type { ReadText } from './read-text';

const turns = new InTurn();
const eventEndings: readonly string[] = ['.brimful'];
const exportEndings: readonly string[] = ['.pdf', '.html', '.csv', '.txt'];

/** Reads an event file. @throws HostProblem */
export function openEvent(path: string): Promise<ReadText> {
  checkPath(path, [...eventEndings, '.bak', '.json']);
  return readText(path);
}

/**
 * Saves an event file, keeping the version before as `.bak`.
 * @param expect the modification time last seen (milliseconds), or null to overwrite whatever is there
 * A file that holds this text already is left as it is, and so is its `.bak`.
 * @throws HostProblem `changed-outside` when the file is newer or older than expected; nothing is written then
 */
export function saveEvent(path: string, text: string, expect: number | null, options: Omit<SaveOptions, 'backup'> = {}): Promise<number> {
  checkPath(path, eventEndings);
  // What could not be opened again is not saved.
  if (Buffer.byteLength(text) > largestFileBytes) throw HostProblem.of('host.too-large', { path, megabytes: largestFileBytes / 1_000_000 });
  return turns.run(path, async () => {
    const there = await modifiedOf(path);
    if (expect !== null && there !== null && there !== expect) throw HostProblem.of('host.changed-outside', { path });
    // Saved twice in a row, the version before is still worth more than a second copy of this one.
    if (there !== null && (await holds(path, text))) return there;
    return saveAtomically(path, text, { ...options, backup: true });
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
export async function writeExport(path: string, content: string | Uint8Array): Promise<void> {
  checkPath(path, exportEndings);
  await turns.run(path, () => saveAtomically(path, content));
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
