import { open } from 'node:fs/promises';
import { codeOf, diskProblem, HostProblem } from '../problem';

/** Largest event file that is read, in bytes. The reference event has about 60 kB. */
export const largestFileBytes = 8_000_000;

/** A text file and when it was last changed. */
export interface ReadText {
  readonly text: string;
  readonly modified: number;
}

/**
 * Reads a text file whole.
 * @throws HostProblem when it is missing, a folder, too large or no text.
 */
export async function readText(path: string, largest: number = largestFileBytes): Promise<ReadText> {
  try {
    const file = await open(path, 'r');
    try {
      const facts = await file.stat();
      if (!facts.isFile()) throw HostProblem.of('host.not-a-file', { path });
      if (facts.size > largest) throw HostProblem.of('host.too-large', { path, megabytes: Math.floor(largest / 1_000_000) });
      return { text: decode(await file.readFile(), path), modified: facts.mtimeMs };
    } finally {
      await file.close();
    }
  } catch (error) {
    if (codeOf(error) === 'ENOENT' || codeOf(error) === 'ENOTDIR') throw HostProblem.of('host.no-file', { path });
    throw diskProblem(error, path);
  }
}

function decode(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw HostProblem.of('host.not-text', { path });
  }
}
