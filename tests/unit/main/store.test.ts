import { chmod, link, lstat, mkdir, mkdtemp, readFile, readdir, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { HostProblem } from '../../../src-main/problem';
import { fileNameOf, listEvents, openEvent, openStore, saveAtomically, saveEvent, sweepTemporaries, diskCalls, temporaryName, titleOf, writeExport } from '../../../src-main/store';
import type { FileCalls } from '../../../src-main/store';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-store-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const codeOf = async (work: Promise<unknown>): Promise<string> => {
  try {
    await work;
    return 'no problem';
  } catch (error) {
    return error instanceof HostProblem ? error.problem.code : `not a problem: ${String(error)}`;
  }
};
const failing = (call: keyof FileCalls, code: string): FileCalls => ({
  ...diskCalls,
  [call]: () => Promise.reject(Object.assign(new Error(code), { code })),
});
const names = async () => (await readdir(folder)).sort();
const rights = async (path: string): Promise<number> => (await stat(path)).mode & 0o777;

describe('saving whole or not at all', () => {
  it('writes a new file and leaves nothing beside it', async () => {
    const path = join(folder, 'a.brimful');
    const modified = await saveAtomically(path, 'one', { backup: true });
    expect(await readFile(path, 'utf8')).toBe('one');
    expect(modified).toBe((await stat(path)).mtimeMs);
    expect(await names()).toEqual(['a.brimful']);
  });

  it('keeps the version before as .bak, and only that one', async () => {
    const path = join(folder, 'a.brimful');
    for (const text of ['one', 'two', 'three']) await saveAtomically(path, text, { backup: true });
    expect(await readFile(path, 'utf8')).toBe('three');
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('two');
    expect(await names()).toEqual(['a.brimful', 'a.brimful.bak']);
  });

  it('copies the version before where a disk has no second names', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'one');
    await saveAtomically(path, 'two', { backup: true, calls: failing('link', 'EPERM') });
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('one');
    expect(await readFile(path, 'utf8')).toBe('two');
  });

  it('goes on when the disk takes a little at a time', async () => {
    const path = join(folder, 'a.brimful');
    const slow: FileCalls = {
      ...diskCalls,
      create: async (at, mode) => {
        const file = await diskCalls.create(at, mode);
        return { ...file, write: (bytes) => file.write(bytes.subarray(0, 3)) };
      },
    };
    await saveAtomically(path, 'half-moon fritters ½', { calls: slow });
    expect(await readFile(path, 'utf8')).toBe('half-moon fritters ½');
  });

  it('keeps the rights of the file and follows a link to it', async () => {
    const path = join(folder, 'real.brimful');
    const alias = join(folder, 'alias.brimful');
    await writeFile(path, 'one');
    await chmod(path, 0o640);
    await symlink(path, alias);
    await saveAtomically(alias, 'two');
    expect((await lstat(alias)).isSymbolicLink()).toBe(true);
    expect(await readFile(path, 'utf8')).toBe('two');
    expect((await stat(path)).mode & 0o777).toBe(0o640);
  });

  it.each([
    ['create', 'ENOSPC', 'full'], ['create', 'EROFS', 'read-only'], ['create', 'EACCES', 'read-only'], ['create', 'ENOENT', 'no-folder'],
    ['create', 'ENAMETOOLONG', 'name-too-long'], ['rename', 'EIO', 'disk'], ['mayWrite', 'EACCES', 'read-only'],
  ] as const)('tells %s failing with %s as %s', async (call, code, problem) => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'old');
    expect(await codeOf(saveAtomically(path, 'new', { backup: true, calls: failing(call, code) }))).toBe(problem);
    expect(['old', 'new']).toContain(await readFile(path, 'utf8'));
  });

  it.each(['EINVAL', 'ENOTSUP', 'EIO'])('stands when the folder cannot be flushed after the rename (%s)', async (code) => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'old');
    const modified = await saveAtomically(path, 'new', { calls: failing('syncFolder', code) });
    expect(await readFile(path, 'utf8')).toBe('new');
    expect(modified).toBe((await stat(path)).mtimeMs);
  });

  it('keeps rights that new files of this account do not get', async () => {
    const path = join(folder, 'a.brimful');
    await writeFile(path, 'one');
    await chmod(path, 0o664);
    const before = process.umask(0o077);
    try {
      await saveAtomically(path, 'two');
    } finally {
      process.umask(before);
    }
    expect((await stat(path)).mode & 0o777).toBe(0o664);
  });

  it('saves although the disk knows no rights', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'one');
    const withoutRights: FileCalls = { ...diskCalls, create: async (at, mode) => ({ ...(await diskCalls.create(at, mode)), setMode: () => Promise.reject(Object.assign(new Error('EPERM'), { code: 'EPERM' })) }) };
    await saveAtomically(path, 'two', { calls: withoutRights });
    expect(await readFile(path, 'utf8')).toBe('two');
  });

  it('makes the file that a link points to and that is not there, and leaves the link a link', async () => {
    const [alias, middle] = [join(folder, 'alias.brimful'), join(folder, 'middle.brimful')];
    await mkdir(join(folder, 'drive'));
    await symlink('middle.brimful', alias);
    await symlink(join('drive', 'real.brimful'), middle);
    await saveAtomically(alias, 'one');
    expect((await lstat(alias)).isSymbolicLink() && (await lstat(middle)).isSymbolicLink()).toBe(true);
    expect(await readFile(join(folder, 'drive', 'real.brimful'), 'utf8')).toBe('one');
    await rm(join(folder, 'drive'), { recursive: true });
    expect(await codeOf(saveAtomically(alias, 'two'))).toBe('no-folder');
    expect((await lstat(alias)).isSymbolicLink()).toBe(true);
    await symlink('ring.brimful', join(folder, 'ring.brimful'));
    expect(await codeOf(saveAtomically(join(folder, 'ring.brimful'), 'x'))).toBe('disk');
  });

  it('flushes the file before it gets its name, and the folder after', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'one');
    const made: string[] = [];
    const noted: FileCalls = {
      ...diskCalls,
      create: async (at, mode) => {
        const file = await diskCalls.create(at, mode);
        return {
          ...file,
          write: (bytes) => { made.push('write'); return file.write(bytes); },
          sync: () => { made.push('flush file'); return file.sync(); },
          close: () => { made.push('close'); return file.close(); },
        };
      },
      rename: (from, to) => { made.push(`rename to ${to.slice(folder.length + 1)}`); return diskCalls.rename(from, to); },
      syncFolder: (at) => { made.push(at === folder ? 'flush folder' : `flush ${at}`); return diskCalls.syncFolder(at); },
    };
    await saveAtomically(path, 'two', { calls: noted });
    expect(made).toEqual(['write', 'flush file', 'close', 'rename to a.brimful', 'flush folder']);
  });

  it('does not give a name to a file whose flush failed', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'one');
    const calls: FileCalls = { ...diskCalls, create: async (at, mode) => ({ ...(await diskCalls.create(at, mode)), sync: () => Promise.reject(Object.assign(new Error('EIO'), { code: 'EIO' })) }) };
    expect(await codeOf(saveAtomically(path, 'two', { calls }))).toBe('disk');
    expect(await readFile(path, 'utf8')).toBe('one');
    expect(await names()).toEqual(['a.brimful']);
  });

  it('leaves a file that holds the text already, and its .bak, as they are', async () => {
    const path = join(folder, 'a.brimful');
    await saveEvent(path, 'one', null);
    const second = await saveEvent(path, 'two', null);
    expect(await saveEvent(path, 'two', second)).toBe(second);
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('one');
    await expect(codeOf(saveEvent(path, 'two', second - 1))).resolves.toBe('changed-outside');
  });

  it('saves although the .bak cannot be replaced, and says so', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'old');
    await mkdir(`${path}.bak`);
    const heard: unknown[] = [];
    await saveAtomically(path, 'new', { backup: true, backupFailed: (error) => heard.push(error) });
    expect(await readFile(path, 'utf8')).toBe('new');
    expect(heard).toHaveLength(1);
    expect(await names()).toEqual(['a.brimful', 'a.brimful.bak']);
  });

  it('flushes a version before that had to be copied', async () => {
    const path = join(folder, 'a.brimful');
    await saveAtomically(path, 'old');
    const flushed: string[] = [];
    await saveAtomically(path, 'new', { backup: true, calls: { ...failing('link', 'EPERM'), syncFile: async (at) => { flushed.push(at); await diskCalls.syncFile(at); } } });
    expect(flushed).toEqual([expect.stringContaining('.a.brimful.bak.')]);
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('old');
  });

  it('says that a folder is missing', async () => {
    expect(await codeOf(saveAtomically(join(folder, 'gone', 'a.brimful'), 'x'))).toBe('no-folder');
  });
});

describe('leftovers of killed saves', () => {
  it('removes those whose process is gone and nothing else', async () => {
    const mine = temporaryName(join(folder, 'a.brimful'), 1);
    const gone = temporaryName(join(folder, 'a.brimful'), 999_999);
    for (const path of [mine, gone, join(folder, 'a.brimful'), join(folder, '.other.tmp')]) await writeFile(path, '');
    const removed = await sweepTemporaries(folder, diskCalls, (pid) => pid === 1);
    expect(removed.map((name) => join(folder, name))).toEqual([gone]);
    expect(await names()).toHaveLength(3);
  });

  it('says nothing of a folder that is not there', async () => {
    expect(await sweepTemporaries(join(folder, 'gone'), diskCalls)).toEqual([]);
  });
});

describe('event files', () => {
  it('refuses to write over what another program changed', async () => {
    const path = join(folder, 'a.brimful');
    const first = await saveEvent(path, 'one', null);
    await utimes(path, new Date(), new Date(first + 5000));
    expect(await codeOf(saveEvent(path, 'two', first))).toBe('changed-outside');
    // A file put back from a backup is older than the one last seen.
    await utimes(path, new Date(), new Date(first - 5000));
    expect(await codeOf(saveEvent(path, 'two', first))).toBe('changed-outside');
    expect(await readFile(path, 'utf8')).toBe('one');
    await saveEvent(path, 'two', null);
    expect(await readFile(path, 'utf8')).toBe('two');
  });

  it('lets two saves follow each other, and only the first of two with the same expectation win', async () => {
    const path = join(folder, 'a.brimful');
    const first = await saveEvent(path, 'one', null);
    await new Promise((settle) => setTimeout(settle, 15));
    const outcomes = await Promise.all([codeOf(saveEvent(path, 'two', first)), codeOf(saveEvent(path, 'three', first))]);
    expect(outcomes).toEqual(['no problem', 'changed-outside']);
    expect(await readFile(path, 'utf8')).toBe('two');
  });

  it('knows a file and a link to it as one: the second of two saves with the same expectation is refused', async () => {
    const [path, alias] = [join(folder, 'a.brimful'), join(folder, 'alias.brimful')];
    const first = await saveEvent(path, 'one', null);
    await symlink(path, alias);
    for (let round = 0, seen = first; round < 20; round += 1) {
      const outcomes = await Promise.allSettled([saveEvent(path, `file ${round}`, seen), saveEvent(alias, `link ${round}`, seen)]);
      expect(outcomes.map(({ status }) => status).sort(), `round ${round}`).toEqual(['fulfilled', 'rejected']);
      seen = (await stat(path)).mtimeMs;
    }
  });

  it('saves again a file that was removed meanwhile, and says so', async () => {
    const path = join(folder, 'a.brimful');
    const said: string[] = [];
    const wasGone = (): void => void said.push('gone');
    const first = await saveEvent(path, 'one', null, { wasGone });
    expect(said).toEqual([]);
    await rm(path);
    await saveEvent(path, 'two', first, { wasGone });
    expect(await readFile(path, 'utf8')).toBe('two');
    expect(said).toEqual(['gone']);
  });

  it('saves nothing that it could not open again', async () => {
    const path = join(folder, 'a.brimful');
    await saveEvent(path, 'one', null);
    expect(await codeOf((async () => saveEvent(path, '\u00bd'.repeat(4_000_001), null))())).toBe('too-large');
    expect(await readFile(path, 'utf8')).toBe('one');
  });

  it('reads back a kept copy of the largest event, however much of it is escaped', async () => {
    const { recovery } = await open();
    const text = '"\n'.repeat(3_900_000);
    await recovery.keep('large', { path: null, modified: null, text, at: 1 });
    expect((await recovery.read('large')).text.length).toBe(text.length);
  });

  it('writes no programs and no relative paths', async () => {
    expect(await codeOf((async () => saveEvent(join(folder, 'a.sh'), 'x', null))())).toBe('wrong-ending');
    expect(await codeOf((async () => saveEvent('a.brimful', 'x', null))())).toBe('not-absolute');
    expect(await codeOf(writeExport(join(folder, '.bashrc'), 'x'))).toBe('wrong-ending');
    expect(await codeOf(writeExport(join(folder, 'a.brimful'), 'x'))).toBe('wrong-ending');
    expect(await codeOf(writeExport(join(folder, 'list.csv'), 'x'))).toBe('no problem');
  });

  it.each([
    ['missing.brimful', 'no-file'], ['folder.brimful', 'not-a-file'], ['binary.brimful', 'not-text'], ['large.brimful', 'too-large'],
  ])('says of %s: %s', async (name, problem) => {
    await mkdir(join(folder, 'folder.brimful'));
    await writeFile(join(folder, 'binary.brimful'), Buffer.from([0xff, 0xfe, 0x00, 0xd8]));
    await writeFile(join(folder, 'large.brimful'), Buffer.alloc(8_000_001, 32));
    expect(await codeOf(openEvent(join(folder, name)))).toBe(problem);
  });

  it('lists the event files of a folder, newest first, damaged ones by their name', async () => {
    await writeFile(join(folder, 'old.brimful'), JSON.stringify({ title: 'Old evening', day: '2026-01-02' }));
    await utimes(join(folder, 'old.brimful'), 1, 1);
    await writeFile(join(folder, 'broken.brimful'), '{');
    await writeFile(join(folder, 'note.txt'), '');
    const list = await listEvents(folder);
    expect(list.map(({ title, day, exists }) => ({ title, day, exists }))).toEqual([
      { title: 'broken', day: '', exists: true }, { title: 'Old evening', day: '2026-01-02', exists: true },
    ]);
    expect(await listEvents(join(folder, 'gone'))).toEqual([]);
  });
});

describe('names', () => {
  it.each([
    ['Diwali / big one: 70?', 'Diwali big one 70'], ['..', 'event'], ['', 'event'], ['  a\n b ', 'a b'], ['.hidden', 'hidden'], ['Fête d’été', 'Fête d’été'],
  ])('makes a file name of %j', (title, name) => {
    expect(fileNameOf(title)).toBe(name);
  });

  it('never leaves the folder', () => {
    expect(fileNameOf('../../etc/passwd')).not.toMatch(/[\\/]|^\./);
  });

  it('takes title and day from a file, and its name where there is none', () => {
    expect(titleOf('{"title":"Feast","day":"2026-12-12"}', '/x/y.brimful')).toEqual({ title: 'Feast', day: '2026-12-12' });
    expect(titleOf('[]', '/x/y.brimful')).toEqual({ title: 'y', day: '' });
    expect(titleOf('null', '/x/y.brimful.bak')).toEqual({ title: 'y', day: '' });
  });
});

const open = () => openStore({ data: join(folder, 'data'), events: join(folder, 'events'), demos: join(folder, 'demos') });
describe('the store', () => {
  it('starts with nothing and keeps settings over a restart', async () => {
    const store = await open();
    expect(await store.settings.read()).toMatchObject({ theme: 'system', units: 'metric', folder: null });
    await Promise.all([store.settings.change((s) => ({ ...s, theme: 'night' })), store.settings.change((s) => ({ ...s, units: 'us' }))]);
    expect(await (await open()).settings.read()).toMatchObject({ theme: 'night', units: 'us' });
  });

  it('puts only the field of the settings back that cannot be used, and keeps that file aside', async () => {
    const store = await open();
    const path = join(folder, 'data', 'settings.json');
    const written = JSON.stringify({ theme: 'purple', units: 'us', folder: join(folder, 'mine') });
    await store.settings.change((s) => s);
    await writeFile(path, written);
    expect(await store.settings.read()).toMatchObject({ theme: 'system', units: 'us', folder: join(folder, 'mine') });
    expect(await store.eventsFolder()).toBe(join(folder, 'mine'));
    await store.settings.change((s) => ({ ...s, clock: '12' }));
    expect(JSON.parse(await readFile(path, 'utf8'))).toMatchObject({ theme: 'system', units: 'us', clock: '12', folder: join(folder, 'mine') });
    expect(await readFile(`${path}.damaged`, 'utf8')).toBe(written);
    await rm(`${path}.damaged`);
    await store.settings.change((s) => ({ ...s, clock: '24' }));
    expect(await readdir(join(folder, 'data'))).toEqual(['settings.json']);
  });

  it.each(['{"theme":', '[]', 'null', '7', ''])('reads settings that are no settings as untouched ones, and keeps them aside: %j', async (text) => {
    const store = await open();
    const path = join(folder, 'data', 'settings.json');
    await store.settings.change((s) => ({ ...s, theme: 'night' }));
    await writeFile(path, text);
    expect(await store.settings.read()).toMatchObject({ theme: 'system' });
    await store.settings.change((s) => ({ ...s, units: 'us' }));
    expect(await readFile(`${path}.damaged`, 'utf8')).toBe(text);
    expect(await store.settings.read()).toMatchObject({ theme: 'system', units: 'us' });
  });

  it('leaves out only the recent event that cannot be used', async () => {
    const { recents } = await open();
    await recents.note('/x/a.brimful', 'A', '');
    await writeFile(join(folder, 'data', 'recents.json'), JSON.stringify([{ path: '', title: 'no', day: '' }, { path: '/x/b.brimful', title: 'B', day: '' }]));
    expect((await recents.list()).map(({ title }) => title)).toEqual(['B']);
  });

  it('lets nobody else read unsaved work', async () => {
    const { recovery } = await open();
    const place = join(folder, 'data', 'recovery');
    await mkdir(place, { recursive: true, mode: 0o755 });
    await chmod(place, 0o755);
    await writeFile(join(place, 'one.json'), '{}', { mode: 0o644 });
    await recovery.keep('one', { path: null, modified: null, text: '{}', at: 1 });
    await recovery.keep('two', { path: null, modified: null, text: '{}', at: 1 });
    expect(await Promise.all([rights(place), rights(join(place, 'one.json')), rights(join(place, 'two.json'))])).toEqual([0o700, 0o600, 0o600]);
  });

  it('keeps twelve recent events, newest first, each once, and knows which are gone', async () => {
    const { recents } = await open();
    for (let n = 1; n <= 14; n += 1) await recents.note(join(folder, `${n}.brimful`), `Event ${n}`, '2026-01-01');
    await recents.note(join(folder, '5.brimful'), 'Event five', '2026-01-01');
    const list = await recents.list();
    expect(list).toHaveLength(12);
    expect(list[0]).toMatchObject({ title: 'Event five', exists: false });
    expect(list.filter((recent) => recent.path.endsWith('/5.brimful'))).toHaveLength(1);
    await recents.forget(join(folder, '5.brimful'));
    expect((await recents.list())[0]?.title).toBe('Event 14');
  });

  it('keeps unsaved work until it is discarded, and skips damaged copies', async () => {
    const { recovery } = await open();
    await recovery.keep('one', { path: null, modified: null, text: '{"title":"First"}', at: 10 });
    await recovery.keep('two', { path: '/x/two.brimful', modified: 7, text: '{', at: 20 });
    await writeFile(join(folder, 'data', 'recovery', 'bad.json'), 'nonsense');
    expect(await recovery.list()).toEqual([
      { id: 'two', title: 'two', path: '/x/two.brimful', at: 20 }, { id: 'one', title: 'First', path: null, at: 10 },
    ]);
    expect((await recovery.read('one')).text).toBe('{"title":"First"}');
    await recovery.discard('one');
    expect(await codeOf(recovery.read('one'))).toBe('no-recovery');
    expect(await codeOf((async () => recovery.keep('../x', { path: null, modified: null, text: '', at: 0 }))())).toBe('no-recovery');
  });

  it('reads demo events by their id only', async () => {
    await mkdir(join(folder, 'demos'));
    await writeFile(join(folder, 'demos', 'lantern.brimful'), '{"title":"Lantern"}');
    await writeFile(join(folder, 'secret.brimful'), 'x');
    await link(join(folder, 'secret.brimful'), join(folder, 'demos', 'not listed.brimful'));
    const { demos } = await open();
    expect(await demos.list()).toEqual([{ id: 'lantern', title: 'Lantern' }]);
    expect(await demos.text('lantern')).toBe('{"title":"Lantern"}');
    expect(await codeOf(demos.text('../secret'))).toBe('no-demo');
    expect(await codeOf(demos.text('other'))).toBe('no-demo');
  });
});
