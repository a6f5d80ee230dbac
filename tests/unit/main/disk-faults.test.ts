import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HostProblem } from '../../../src-main/problem';
import { diskCalls, saveAtomically } from '../../../src-main/store';
import type { FileCalls } from '../../../src-main/store';

// The N-th file call fails, N = 1, 2, 3 ... until a save runs through; once failing a single time and once from then on.
// Method: "How SQLite Is Tested", sqlite.org/testing.html, chapter on input/output errors.
function breaking(at: number, forEver: boolean, code: string): { calls: FileCalls; made: () => number } {
  let made = 0;
  const step = async <T>(work: () => Promise<T>): Promise<T> => {
    made += 1;
    if (forEver ? made >= at : made === at) throw Object.assign(new Error(code), { code });
    return work();
  };
  const calls: FileCalls = {
    realpath: (p) => step(() => diskCalls.realpath(p)),
    mode: (p) => step(() => diskCalls.mode(p)),
    modified: (p) => step(() => diskCalls.modified(p)),
    mayWrite: (p) => step(() => diskCalls.mayWrite(p)),
    create: async (p, mode) => {
      const file = await step(() => diskCalls.create(p, mode));
      return {
        write: (bytes) => step(() => file.write(bytes)),
        sync: () => step(() => file.sync()),
        close: async () => {
          await file.close();
          await step(() => Promise.resolve());
        },
      };
    },
    link: (a, b) => step(() => diskCalls.link(a, b)),
    copy: (a, b) => step(() => diskCalls.copy(a, b)),
    rename: (a, b) => step(() => diskCalls.rename(a, b)),
    remove: (p) => step(() => diskCalls.remove(p)),
    list: (p) => step(() => diskCalls.list(p)),
    makeFolder: (p) => step(() => diskCalls.makeFolder(p)),
    syncFile: (p) => step(() => diskCalls.syncFile(p)),
    syncFolder: (p) => step(() => diskCalls.syncFolder(p)),
  };
  return { calls, made: () => made };
}

describe('a disk that fails at any one call', () => {
  it.each([
    ['once', false, 'EIO'], ['from then on', true, 'EIO'], ['once, full', false, 'ENOSPC'], ['from then on, full', true, 'ENOSPC'], ['from then on, read-only', true, 'EROFS'],
  ])('leaves the old file or the new one, whole (%s)', async (_name, forEver, code) => {
    let clean = false;
    let reported = 0;
    for (let at = 1; !clean && at < 60; at += 1) {
      const folder = await mkdtemp(join(tmpdir(), 'brimful-faults-'));
      const path = join(folder, 'a.brimful');
      await saveAtomically(path, 'older');
      await saveAtomically(path, 'old', { backup: true });
      const { calls, made } = breaking(at, forEver, code);
      const failure: unknown = await saveAtomically(path, 'new', { backup: true, calls }).then(() => null, (error: unknown) => error);
      if (failure !== null) reported += 1;
      expect(failure === null || failure instanceof HostProblem, `call ${at}`).toBe(true);
      expect(failure === null ? ['new'] : ['old', 'new'], `call ${at}`).toContain(await readFile(path, 'utf8'));
      expect(['older', 'old'], `call ${at}`).toContain(await readFile(`${path}.bak`, 'utf8'));
      // A disk that refuses everything also refuses to clear up; then the next start does it.
      const leftovers = (await readdir(folder)).filter((name) => name.endsWith('-tmp'));
      expect(forEver || leftovers.length === 0, `call ${at}`).toBe(true);
      clean = made() < at;
      await rm(folder, { recursive: true });
    }
    expect(clean).toBe(true);
    expect(reported).toBeGreaterThan(6);
  });
});
