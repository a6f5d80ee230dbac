import { dirname, resolve } from 'node:path';
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
  /** Only the person who saves may read it. */
  readonly isPrivate?: boolean;
}

/** Rights of a new file, and of one that only its owner may read. */
const [newMode, privateMode] = [0o644, 0o600];

/**
 * Writes a file so that a reader finds the old version or the new one, whole, whatever happens in between:
 * a new file beside it, flushed, renamed over it, and the folder flushed where the disk can. Answers the new modification time.
 * @throws HostProblem with a sentence of its own for a full disk, a file or folder that may only be read, a missing folder.
 */
export async function saveAtomically(path: string, content: string | Uint8Array, options: SaveOptions = {}): Promise<number> {
  const calls = options.calls ?? diskCalls;
  try {
    const target = await realFile(path, calls);
    const mode = await modeOf(target, calls);
    if (mode !== null) await calls.mayWrite(target);
    const temporary = temporaryName(target);
    let modified: number;
    try {
      await writeFlushed(temporary, typeof content === 'string' ? Buffer.from(content, 'utf8') : content, options.isPrivate === true ? privateMode : mode, calls);
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

/** Most links that follow one another, as Linux has it. */
const mostLinks = 40;

/** The file a path means. A linked event file stays a link: the file it points to is replaced, or made where there is none. @throws the disk's own error */
export async function realFile(path: string, calls: FileCalls, links = mostLinks): Promise<string> {
  try {
    return await calls.realpath(path);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT' || links === 0) throw error;
  }
  const to = await linkedTo(path, calls);
  return to === null ? path : realFile(resolve(dirname(path), to), calls, links - 1);
}

/** Where a link points; null for what is no link, or is not there. */
async function linkedTo(path: string, calls: FileCalls): Promise<string | null> {
  try {
    return await calls.readlink(path);
  } catch (error) {
    if (codeOf(error) === 'ENOENT' || codeOf(error) === 'EINVAL') return null;
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

/** `mode`: rights of the file that is replaced; null for a new one. */
async function writeFlushed(path: string, bytes: Uint8Array, mode: number | null, calls: FileCalls): Promise<void> {
  const file = await calls.create(path, mode ?? newMode);
  try {
    // Disks without rights (memory sticks) refuse. What is saved is whole all the same.
    if (mode !== null) await file.setMode(mode).catch(() => {});
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
