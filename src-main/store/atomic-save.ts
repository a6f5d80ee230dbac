import { dirname } from 'node:path';
import { codeOf, diskProblem } from '../problem';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { temporaryName } from './temporary-names';

/** What a save may be told. */
export interface SaveOptions {
  /** Keep the version before as `<path>.bak`. */
  readonly backup?: boolean;
  /** The version before could not be kept. The save goes on: an old `.bak` must not stand in its way. */
  readonly backupFailed?: (error: unknown) => void;
  readonly calls?: FileCalls;
}

/**
 * Writes a file so that a reader finds the old version or the new one, whole, whatever happens in between:
 * a new file beside it, flushed, renamed over it, and the folder flushed where the disk can. Answers the new modification time.
 * @throws HostProblem with a sentence of its own for a full disk, a file or folder that may only be read, a missing folder.
 */
export async function saveAtomically(path: string, content: string | Uint8Array, options: SaveOptions = {}): Promise<number> {
  const calls = options.calls ?? diskCalls;
  try {
    const target = await followLink(path, calls);
    const mode = await modeOf(target, calls);
    if (mode !== null) await calls.mayWrite(target);
    const temporary = temporaryName(target);
    let modified: number;
    try {
      await writeFlushed(temporary, typeof content === 'string' ? Buffer.from(content, 'utf8') : content, mode ?? 0o644, calls);
      // A rename keeps the time. Asked for now, so that nothing after the rename can make a save that stands look failed.
      modified = await calls.modified(temporary);
      if (options.backup === true && mode !== null) await keepPrevious(target, calls).catch((error: unknown) => options.backupFailed?.(error));
      await renamePatiently(temporary, target, calls);
    } catch (error) {
      await calls.remove(temporary).catch(() => {});
      throw error;
    }
    // Some disks (network folders, memory sticks) cannot flush a folder. The file is in its place all the same.
    await calls.syncFolder(dirname(target)).catch(() => {});
    return modified;
  } catch (error) {
    throw diskProblem(error, path);
  }
}

/** A linked event file stays a link: the file it points to is replaced. */
async function followLink(path: string, calls: FileCalls): Promise<string> {
  try {
    return await calls.realpath(path);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return path;
    throw error;
  }
}

async function modeOf(path: string, calls: FileCalls): Promise<number | null> {
  try {
    return await calls.mode(path);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

async function writeFlushed(path: string, bytes: Uint8Array, mode: number, calls: FileCalls): Promise<void> {
  const file = await calls.create(path, mode);
  try {
    // A disk may take less than it was given; the rest follows.
    for (let done = 0; done < bytes.length; ) {
      const wrote = await file.write(bytes.subarray(done));
      if (wrote <= 0) throw Object.assign(new Error('the disk took nothing'), { code: 'ENOSPC' });
      done += wrote;
    }
    await file.sync();
  } finally {
    await file.close();
  }
}

/** The version before becomes `.bak` by a second name for the same bytes, so that the file itself is never away. */
async function keepPrevious(target: string, calls: FileCalls): Promise<void> {
  const aside = temporaryName(`${target}.bak`);
  try {
    try {
      await calls.link(target, aside);
    } catch {
      // Disks without second names (memory sticks) get a copy.
      await calls.copy(target, aside);
      await calls.syncFile(aside);
    }
    await calls.rename(aside, `${target}.bak`);
  } catch (error) {
    await calls.remove(aside).catch(() => {});
    throw error;
  }
}

/** On Windows another program may hold the file for a moment; waits up to about two seconds. */
async function renamePatiently(from: string, to: string, calls: FileCalls): Promise<void> {
  for (let wait = 20; ; wait *= 2) {
    try {
      await calls.rename(from, to);
      return;
    } catch (error) {
      if (process.platform !== 'win32' || wait > 1000 || !['EPERM', 'EACCES', 'EBUSY'].includes(codeOf(error))) throw error;
      await new Promise((resolve) => setTimeout(resolve, wait));
    }
  }
}
