import { mkdir, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HostProblem } from '../../../src-main/problem';
import { newEvent, serialiseEvent } from '../../../shared/event';
import { emptyShelf, serialiseShelf } from '../../../shared/household';
import { allCalls, makeHandle } from '../../../src-main/answer';
import type { Shell } from '../../../src-main/answer';
import { diskCalls, openStore, saveAtomically } from '../../../src-main/store';
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
    readlink: (p) => step(() => diskCalls.readlink(p)),
    mode: (p) => step(() => diskCalls.mode(p)),
    modified: (p) => step(() => diskCalls.modified(p)),
    mayWrite: (p) => step(() => diskCalls.mayWrite(p)),
    create: async (p, mode) => {
      const file = await step(() => diskCalls.create(p, mode));
      return {
        write: (bytes) => step(() => file.write(bytes)),
        setMode: (rights) => step(() => file.setMode(rights)),
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
    makeFolder: (p, mode) => step(() => diskCalls.makeFolder(p, mode)),
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

const shell: Shell = {
  kind: 'test', version: '1', openPath: null, dialogs: null, ready: () => {}, setUnsaved: () => {}, close: () => {},
  pdf: () => Promise.resolve(Buffer.from('%PDF-1.4')), paper: () => Promise.resolve(false),
};
const event = serialiseEvent(newEvent({ id: 'a', title: 'A', day: '2026-12-12' }));
const writing: [string, (folder: string) => unknown][] = [
  ['events.save', (folder) => ({ path: join(folder, 'events', 'a.brimful'), text: event, expect: null })],
  ['events.chooseSave', () => ({ name: 'a' })],
  ['recovery.keep', () => ({ id: 'a', path: null, text: event })],
  ['shelf.write', () => ({ text: serialiseShelf(emptyShelf), expect: null })],
  ['settings.set', () => ({ units: 'us' })],
  ['events.forget', () => ({ path: '/x' })],
  ['print.pdf', () => ({ html: '<p>x</p>', name: 'a', path: null })],
  ['files.write', (folder) => ({ path: join(folder, 'events', 'a.csv'), text: 'a' })],
];
describe('every call that writes, on a disk that fails at any one call', () => {
  const codes = ['EIO', 'ENOSPC', 'EACCES', 'EROFS', 'EEXIST', 'ENOTDIR'];
  it.each(writing)('%s is told in words of the cook, or done', async (method, input) => {
    for (const code of codes) {
      let clean = false;
      let refused = 0;
      for (let at = 1; !clean && at < 80; at += 1) {
        const folder = await mkdtemp(join(tmpdir(), 'brimful-faults-'));
        const places = { data: join(folder, 'data'), events: join(folder, 'events'), demos: folder };
        if (method === 'files.write') await mkdir(places.events);
        const broken = breaking(at, false, code);
        const handle = makeHandle(allCalls(await openStore(places, broken.calls), shell, () => new Date(0)));
        const answer = await handle(method, input(folder));
        const told = answer.ok ? { code: 'done', message: 'Done.', mend: '' } : answer.problem;
        refused += answer.ok ? 0 : 1;
        expect(told, `${code} at ${at}`).toMatchObject({ code: expect.not.stringMatching(/^fault$/) as string, message: expect.stringMatching(/^(?!Something in the program).+\.$/) as string, mend: expect.any(String) as string });
        clean = broken.made() < at;
        await rm(folder, { recursive: true });
      }
      expect(clean, code).toBe(true);
      expect(refused, code).toBeGreaterThan(0);
    }
  });

  it('names a file that stands where a folder should be', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'brimful-faults-'));
    await writeFile(join(folder, 'events'), '');
    await writeFile(join(folder, 'data'), '');
    const store = await openStore({ data: join(folder, 'data'), events: join(folder, 'events'), demos: folder });
    const handle = makeHandle(allCalls(store, shell, () => new Date(0)));
    for (const [method, input] of writing.filter(([name]) => name !== 'files.write')) {
      expect(await handle(method, input(folder)), method).toMatchObject({ ok: false, problem: { code: 'folder-is-file', message: expect.stringContaining(folder) as string } });
    }
    await rm(folder, { recursive: true });
  });
});
