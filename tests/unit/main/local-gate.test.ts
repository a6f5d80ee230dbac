import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import type { IncomingHttpHeaders } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { codeLifeMs, Pass } from '../../../src-main/local/pass';
import { serveLocally } from '../../../src-main/local/server';
import type { LocalServer } from '../../../src-main/local/server';
import { longestText } from '../../../shared/host';
import { largestBodyBytes } from '../../../src-main/local/body';
import { pathInside } from '../../../src-main/pages';

let folder: string;
let server: LocalServer;
let cookie: string;
const asked: [unknown, unknown][] = [];

interface Got { status: number; headers: IncomingHttpHeaders; body: string }
/** A request as raw as Node allows: the path is sent as written. */
function ask(path: string, options: { method?: string; headers?: Record<string, string>; body?: string | Buffer } = {}): Promise<Got> {
  return new Promise((settle, reject) => {
    const sent = request({ host: '127.0.0.1', port: server.port, path, method: options.method ?? 'GET', headers: options.headers ?? {}, agent: false }, (response) => {
      let body = '';
      response.on('data', (piece: Buffer) => (body += piece.toString()));
      response.on('end', () => settle({ status: response.statusCode ?? 0, headers: response.headers, body }));
    });
    sent.on('error', reject);
    sent.end(options.body);
  });
}
const own = () => ({ cookie, origin: `http://127.0.0.1:${server.port}`, 'content-type': 'application/json' });

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-gate-'));
  await mkdir(join(folder, 'pages', 'assets'), { recursive: true });
  await writeFile(join(folder, 'pages', 'index.html'), '<title>Brimful</title>');
  await writeFile(join(folder, 'pages', 'assets', 'a.js'), 'x');
  await writeFile(join(folder, 'pages', 'strange.exe'), 'x');
  await writeFile(join(folder, 'secret.txt'), 'secret');
  await symlink(join(folder, 'secret.txt'), join(folder, 'pages', 'way-out.txt'));
  server = await serveLocally({
    pages: join(folder, 'pages'),
    handle: (method, input) => {
      asked.push([method, input]);
      return Promise.resolve({ ok: true, value: 'answered' });
    },
  });
  const start = new URL(server.startAddress);
  const first = await ask(start.pathname + start.search);
  cookie = first.headers['set-cookie']?.[0]?.split(';')[0] ?? '';
});
afterAll(async () => {
  await server.stop();
  await rm(folder, { recursive: true, force: true });
});

describe('the start code', () => {
  it('becomes a cookie once, named after the port, out of reach of scripts and of other sites', async () => {
    const another = await serveLocally({ pages: join(folder, 'pages'), handle: () => Promise.resolve({ ok: true, value: null }) });
    const response = await fetch(another.startAddress, { redirect: 'manual' });
    expect(response.status).toBe(303);
    expect(response.headers.get('location')).toBe('/');
    expect(response.headers.get('set-cookie')).toMatch(new RegExp(`^brimful-${another.port}=[\\w-]{43}; HttpOnly; SameSite=Strict; Path=/$`));
    expect((await fetch(another.startAddress, { redirect: 'manual' })).status).toBe(403);
    await another.stop();
  });

  it('is refused when wrong or empty', async () => {
    expect((await ask('/?start=')).status).toBe(403);
    expect((await ask('/?start=wrong')).status).toBe(403);
  });

  it('comes from a page on the disk by one more page of our own, so that the strict cookie goes along', async () => {
    const another = await serveLocally({ pages: join(folder, 'pages'), handle: () => Promise.resolve({ ok: true, value: null }) });
    const response = await fetch(another.startAddress, { redirect: 'manual', headers: { 'sec-fetch-site': 'cross-site' } });
    expect(response.status).toBe(200);
    expect(response.headers.get('set-cookie')).toContain('SameSite=Strict');
    expect(await response.text()).toContain('<meta http-equiv="refresh" content="0;url=/">');
    await another.stop();
  });

  it('of a second start leaves the window of the first, still on its way, its own; each opens once', async () => {
    const another = await serveLocally({ pages: join(folder, 'pages'), handle: () => Promise.resolve({ ok: true, value: null }) });
    const fresh = another.newStartAddress();
    const statuses = [];
    for (const address of [another.startAddress, fresh, fresh, another.startAddress]) statuses.push((await fetch(address, { redirect: 'manual' })).status);
    expect(statuses).toEqual([303, 303, 403, 403]);
    await another.stop();
  });

  it('that nobody used is good for an hour', () => {
    let now = 0;
    const pass = new Pass(() => now);
    const codes = [pass.newCode(), pass.newCode()];
    now = codeLifeMs;
    expect(codes.slice(0, 1).map((code) => pass.swap(code))).toEqual([true]);
    now += 1;
    expect(codes.map((code) => pass.swap(code))).toEqual([false, false]);
  });

  it('is one of sixteen at most: the oldest goes', () => {
    const pass = new Pass();
    const codes = Array.from({ length: 17 }, () => pass.newCode());
    expect(codes.map((code) => pass.swap(code))).toEqual([false, ...Array<boolean>(16).fill(true)]);
  });

  it('sends a reload of the start address home when the cookie is there', async () => {
    expect((await ask('/?start=old', { headers: { cookie } })).status).toBe(303);
  });
});

describe('who may come in', () => {
  it.each(['localhost', 'evil.example', '127.0.0.1', '[::1]'])('turns away the host name %s', async (host) => {
    expect((await ask('/', { headers: { host, cookie } })).status).toBe(421);
  });

  it('turns away pages and calls without the cookie, or with a wrong one', async () => {
    expect((await ask('/')).status).toBe(403);
    expect((await ask('/assets/a.js', { headers: { cookie: `brimful-${server.port}=x` } })).status).toBe(403);
    expect((await ask('/rpc/app.info', { method: 'POST', headers: { ...own(), cookie: '' }, body: '{}' })).status).toBe(403);
    expect((await ask('/', { headers: { cookie: cookie.replace(/^brimful-\d+/, 'brimful-1') } })).status).toBe(403);
  });

  it.each([
    ['a foreign origin', { origin: 'https://evil.example' }, 403], ['another port', { origin: 'http://127.0.0.1:1' }, 403], ['a null origin', { origin: 'null' }, 403],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }, 415], ['plain text', { 'content-type': 'text/plain' }, 415],
    ['a page of another site', { 'sec-fetch-site': 'cross-site' }, 403],
  ])('refuses a call from %s', async (_name, headers, status) => {
    const before = asked.length;
    expect((await ask('/rpc/app.info', { method: 'POST', headers: { ...own(), ...headers }, body: '{}' })).status).toBe(status);
    expect(asked).toHaveLength(before);
  });

  it('refuses a call without origin, and one that is not posted', async () => {
    expect((await ask('/rpc/app.info', { method: 'POST', headers: { cookie, 'content-type': 'application/json' }, body: '{}' })).status).toBe(403);
    expect((await ask('/rpc/app.info', { headers: own() })).status).toBe(405);
    expect((await ask('/', { method: 'PUT', headers: own() })).status).toBe(405);
  });

  it('answers a right call', async () => {
    const got = await ask('/rpc/app.info', { method: 'POST', headers: own(), body: '{"a":1}' });
    expect(got).toMatchObject({ status: 200, body: '{"ok":true,"value":"answered"}' });
    expect(asked.at(-1)).toEqual(['app.info', { a: 1 }]);
  });

  it('tells every refused call as a problem with a sentence of its own', async () => {
    const refusals = await Promise.all([
      ask('/rpc/app.info', { method: 'POST', headers: { ...own(), cookie: '' }, body: '{}' }),
      ask('/rpc/app.info', { method: 'POST', headers: { ...own(), origin: 'null' }, body: '{}' }),
      ask('/rpc/app.info', { method: 'POST', headers: { ...own(), 'content-type': 'text/plain' }, body: '{}' }),
      ask('/rpc/app.info', { headers: own() }),
      ask('/rpc/app.info', { method: 'POST', headers: own(), body: '{' }),
      ask('/rpc/app.info', { method: 'POST', headers: { ...own(), 'content-length': String(largestBodyBytes + 1) } }),
    ]);
    const problems = refusals.map(({ body }) => JSON.parse(body) as { ok: boolean; problem: { code: string; message: string } });
    expect(refusals.map(({ status }) => status)).toEqual([403, 403, 415, 405, 400, 413]);
    expect(problems.map(({ ok, problem }) => [ok, problem.code])).toEqual([
      [false, 'gate.closed'], [false, 'gate.foreign'], [false, 'gate.not-json'], [false, 'gate.not-posted'], [false, 'gate.not-json'], [false, 'gate.too-large'],
    ]);
    for (const { problem } of problems) expect(problem.message).toMatch(/^[A-Z].+\.$/);
  });

  it('takes the longest text of the contract, however much of it JSON has to escape', async () => {
    const body = JSON.stringify({ text: '"'.repeat(longestText) });
    const got = await ask('/rpc/app.info', { method: 'POST', headers: own(), body });
    expect(got.status).toBe(200);
    const [, input] = asked.pop() ?? [];
    expect(input).toHaveProperty('text.length', longestText);
    expect(largestBodyBytes).toBeGreaterThan(6 * longestText);
  });

  it('answers a body that is too large after hearing it out, so that the window reads the answer', async () => {
    const got = await ask('/rpc/app.info', { method: 'POST', headers: { ...own(), 'transfer-encoding': 'chunked' }, body: Buffer.alloc(largestBodyBytes + 100_000, 32) });
    expect(got.status).toBe(413);
  });
});

describe('what is served', () => {
  it('serves the page under a strict policy', async () => {
    const { status, headers, body } = await ask('/', { headers: { cookie } });
    expect(status).toBe(200);
    expect(body).toContain('Brimful');
    expect(headers['content-security-policy']).toMatch(/default-src 'none'; script-src 'self'; .*require-trusted-types-for 'script'/);
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer', 'cache-control': 'no-store',
      'cross-origin-opener-policy': 'same-origin', 'cross-origin-resource-policy': 'same-origin',
    });
  });

  it('has the policy on refusals too', async () => {
    expect((await ask('/')).headers['content-security-policy']).toContain(`default-src 'none'`);
  });

  it.each([
    '/../secret.txt', '/..%2fsecret.txt', '/%2e%2e/secret.txt', '/assets/../../secret.txt', '/assets/..%5c..%5csecret.txt', '/way-out.txt', '//etc/passwd', '/%00', '/%E0%A4%A', '/strange.exe', '/gone.js', '/assets',
  ])('does not give out %s', async (path) => {
    const got = await ask(path, { headers: { cookie } });
    expect([400, 404]).toContain(got.status);
    expect(got.body).not.toContain('secret');
  });

  it('listens on this computer only', () => {
    expect(server.startAddress).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?start=[\w-]{43}$/);
  });

  it('keeps every path inside the folder', () => {
    expect(pathInside('/a/b', '/')).toBe('/a/b/index.html');
    expect(pathInside('/a/b', '/c.js')).toBe('/a/b/c.js');
    expect(pathInside('/a/b', '/../bc/x.js')).toBeNull();
    expect(pathInside('/a/b', '/c:/x.js')).toBeNull();
  });
});
