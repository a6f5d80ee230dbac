import { codeOf, diskProblem, HostProblem } from '../problem';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';

/** Rights of a folder that only its owner may look into. */
export const privateFolder = 0o700;

/** Makes a folder, and those above it, where there is none. `mode`: its rights, also when it is there already. @throws HostProblem */
export async function makeFolder(folder: string, calls: FileCalls = diskCalls, mode?: number): Promise<void> {
  try {
    await calls.makeFolder(folder, mode);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || codeOf(error) === 'ENOTDIR') throw HostProblem.of('host.folder-is-file', { path: folder });
    throw diskProblem(error, folder);
  }
}
