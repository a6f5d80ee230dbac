import { basename, dirname, join } from 'node:path';
import type { FileCalls } from './file-calls';

let serial = 0;
const pattern = /^\.(?<name>.+)\.(?<pid>\d+)-\d+\.brimful-tmp$/;

/** A name beside `path` that no other save of this or another program uses. */
export function temporaryName(path: string, pid: number = process.pid): string {
  serial += 1;
  return join(dirname(path), `.${basename(path)}.${pid}-${serial}.brimful-tmp`);
}

/** True when a process of that number runs. One that belongs to somebody else counts. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** Removes what killed saves left in a folder: temporary files whose process is gone. Never fails: they are harmless. */
export async function sweepTemporaries(folder: string, calls: FileCalls, alive: (pid: number) => boolean = isAlive): Promise<string[]> {
  const removed: string[] = [];
  try {
    for (const name of await calls.list(folder)) {
      const pid = pattern.exec(name)?.groups?.['pid'];
      if (pid === undefined || alive(Number(pid))) continue;
      await calls.remove(join(folder, name));
      removed.push(name);
    }
  } catch {
    // A folder that cannot be listed keeps its leftovers.
  }
  return removed;
}
