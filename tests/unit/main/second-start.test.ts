import { mkdtemp, readFile, readdir, rm, stat, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { HandedFiles } from '../../../src-main/local/handed-files';
import { askHolder } from '../../../src-main/local/hand-over';
import type { Holder } from '../../../src-main/local/holder';
import { serveLocally } from '../../../src-main/local/server';
import type { LocalServer } from '../../../src-main/local/server';
import { takeLock } from '../../../src-main/local/single-lock';

let folder: string;
let path: string;
let server: LocalServer;
let handed: HandedFiles;
const secret = 'a secret of this start';
const address = () => `http://127.0.0.1:${server.port}`;
const askNobody = () => Promise.resolve('gone' as const);

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-second-'));
  path = join(folder, 'local.lock');
  handed = new HandedFiles(null);
  server = await serveLocally({ pages: folder, handle: () => Promise.resolve({ ok: true, value: null }), handOver: { secret, take: (file) => handed.give(file) } });
});
afterEach(async () => {
  await server.stop();
  await rm(folder, { recursive: true, force: true });
});
const mine = (): Holder => ({ pid: process.pid, address: address(), secret });
const second = (file: string | null, given = mine()) => askHolder(given, file);

describe('the lock', () => {
  it('is readable by its owner only, whole at every moment, and leaves nothing beside it', async () => {
    const lock = await takeLock(path, mine(), askNobody);
    expect((await stat(path)).mode & 0o777).toBe(0o600);
    expect(JSON.parse(await readFile(path, 'utf8'))).toEqual(mine());
    expect(await readdir(folder)).toEqual(['local.lock']);
    if ('lock' in lock) await lock.lock.release();
    expect(await readdir(folder)).toEqual([]);
  });

  it('is taken over when its number belongs to another program by now', async () => {
    await writeFile(path, JSON.stringify({ pid: process.ppid, address: 'http://127.0.0.1:9', secret: 'old' }));
    const lock = await takeLock(path, mine(), (holder) => askHolder(holder, null));
    expect(lock).toHaveProperty('lock');
  });

  it('is taken over when another program answers at its address', async () => {
    const other: Server = createServer((_request, response) => response.end('hello'));
    await new Promise<void>((go) => { other.listen(0, '127.0.0.1', go); });
    const at = other.address();
    const port = typeof at === 'object' && at !== null ? at.port : 0;
    await writeFile(path, JSON.stringify({ pid: process.pid, address: `http://127.0.0.1:${port}`, secret: 'old' }));
    expect(await takeLock(path, mine(), (holder) => askHolder(holder, null))).toHaveProperty('lock');
    other.close();
  });

  it.each(['', '{"pid":1', 'nonsense'])('is taken over when damaged: %j', async (text) => {
    await writeFile(path, text);
    expect(await takeLock(path, mine(), askNobody)).toHaveProperty('lock');
  });

  it('goes to one of many that start at once', async () => {
    const holders = Array.from({ length: 12 }, (_, n) => ({ pid: process.pid, address: `http://127.0.0.1:${n + 1}`, secret: `${n}` }));
    await writeFile(path, JSON.stringify({ pid: 1, address: 'http://127.0.0.1:9', secret: 'stale' }));
    const outcomes = await Promise.all(holders.map((holder) => takeLock(path, holder, (there) => Promise.resolve(there.secret === 'stale' ? 'gone' : { address: there.address, shown: true }))));
    expect(outcomes.filter((outcome) => 'lock' in outcome)).toHaveLength(1);
    expect(await readdir(folder)).toEqual(['local.lock']);
  });

  it('of somebody else is not removed', async () => {
    const lock = await takeLock(path, mine(), askNobody);
    const other = JSON.stringify({ ...mine(), secret: 'the next one' });
    await writeFile(path, other);
    if ('lock' in lock) await lock.lock.release();
    expect(await readFile(path, 'utf8')).toBe(other);
  });
});

describe('a second start', () => {
  it('gets a start address that opens, and hands its file to the window that listens', async () => {
    const heard = handed.next();
    const answer = await second('/x/feast.brimful');
    expect(answer).toMatchObject({ shown: true });
    expect(await heard).toBe('/x/feast.brimful');
    const fresh = typeof answer === 'object' ? answer.address : '';
    expect((await fetch(fresh, { redirect: 'manual' })).status).toBe(303);
  });

  it('leaves its file for the next window where none listens', async () => {
    expect(await second('/x/feast.brimful')).toMatchObject({ shown: false });
    expect(handed.first).toBe('/x/feast.brimful');
  });

  it('without the secret is turned away, gets no address and hands over nothing', async () => {
    expect(await second('/x/feast.brimful', { ...mine(), secret: 'guessed' })).toBe('gone');
    expect(handed.first).toBeNull();
    const plain = await fetch(`${address()}/hand-over`, { method: 'POST', body: '{"path":null}' });
    expect(plain.status).toBe(403);
    expect(await plain.text()).not.toContain('start=');
  });

  it('from a page is turned away even with the secret', async () => {
    const response = await fetch(`${address()}/hand-over`, { method: 'POST', headers: { authorization: `Bearer ${secret}`, origin: 'https://evil.example' }, body: '{"path":null}' });
    expect(response.status).toBe(403);
  });

  it('is told of one that does not answer', async () => {
    const silent = createServer(() => {});
    await new Promise<void>((go) => { silent.listen(0, '127.0.0.1', go); });
    const at = silent.address();
    const port = typeof at === 'object' && at !== null ? at.port : 0;
    expect(await askHolder({ ...mine(), address: `http://127.0.0.1:${port}` }, null, 100)).toBe('silent');
    silent.closeAllConnections();
    silent.close();
  });
});

describe('files handed over', () => {
  it('reach the window that waits, one after the other, and a wait that is over gets nothing', async () => {
    const files = new HandedFiles('/first.brimful', 20);
    expect(files.first).toBe('/first.brimful');
    expect(await files.next()).toBeNull();
    const wait = files.next();
    expect(files.give('/second.brimful')).toBe(true);
    expect(await wait).toBe('/second.brimful');
    expect(files.give('/third.brimful')).toBe(true);
    expect(await files.next()).toBe('/third.brimful');
  });

  it('do not go to a window that is gone, but to the one that came after it', async () => {
    const files = new HandedFiles(null, 1000);
    const [first, late] = [new AbortController(), new AbortController()];
    const old = files.next(first.signal);
    const now = files.next();
    first.abort();
    expect(await old).toBeNull();
    expect(files.give('/feast.brimful')).toBe(true);
    expect(await now).toBe('/feast.brimful');
    late.abort();
    expect(await files.next(late.signal)).toBeNull();
  });

  it('wait a moment for a window that is being drawn anew', async () => {
    const files = new HandedFiles(null, 1000);
    const old = new AbortController();
    const gone = files.next(old.signal);
    old.abort();
    expect(await gone).toBeNull();
    expect(files.give('/feast.brimful')).toBe(true);
    expect(await files.next()).toBe('/feast.brimful');
  });
});

describe('a window drawn anew while it waits for files', () => {
  it('gets the file, not the page that was there before', async () => {
    const files = new HandedFiles(null);
    const own = await serveLocally({
      pages: folder,
      handle: async (_method, _input, gone) => ({ ok: true, value: { path: await files.next(gone) } }),
      handOver: { secret, take: (file) => files.give(file) },
    });
    const at = `http://127.0.0.1:${own.port}`;
    const entered = await fetch(own.startAddress, { redirect: 'manual' });
    const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? '';
    const wait = (signal: AbortSignal | null = null): Promise<Response> =>
      fetch(`${at}/rpc/app.handed`, { method: 'POST', headers: { cookie, origin: at, 'content-type': 'application/json' }, body: '{}', signal });
    const page = new AbortController();
    const before = wait(page.signal).catch(() => 'gone');
    await vi.waitFor(() => expect(files.windows).toBe(1));
    page.abort();
    expect(await before).toBe('gone');
    await vi.waitFor(() => expect(files.windows).toBe(0));
    const after = wait();
    await vi.waitFor(() => expect(files.windows).toBe(1));
    expect(await askHolder({ pid: process.pid, address: at, secret }, '/feast.brimful')).toMatchObject({ shown: true });
    expect(await (await after).json()).toEqual({ ok: true, value: { path: '/feast.brimful' } });
    await own.stop();
  });
});
