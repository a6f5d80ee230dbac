import { spawn } from 'node:child_process';
import { chmod, mkdtemp, readFile, readdir, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { findBrowser } from '../../src-main/browser';
import { expect, test } from './fixture';
import { startHost } from './local-host';

interface Ended { code: number | null; out: string; err: string }
/** Runs the local host or the launcher; `during` is called once the output holds `mark`. */
async function run(script: string, args: string[], env: Record<string, string>, mark?: string, during?: (pid: number) => void | Promise<void>): Promise<Ended> {
  const data = await mkdtemp(join(tmpdir(), 'brimful-test-'));
  const { DISPLAY: _display, WAYLAND_DISPLAY: _wayland, ...quiet } = process.env;
  const child = spawn(process.execPath, [resolve(script), ...args], { env: { ...quiet, BRIMFUL_DATA_DIR: data, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  let out = '';
  let err = '';
  let called = false;
  child.stdout.on('data', (piece: Buffer) => {
    out += piece.toString();
    if (mark !== undefined && out.includes(mark) && !called) {
      called = true;
      void during?.(child.pid ?? 0);
    }
  });
  child.stderr.on('data', (piece: Buffer) => (err += piece.toString()));
  const code = await new Promise<number | null>((settle) => child.once('close', settle));
  await rm(data, { recursive: true, force: true });
  return { code, out, err };
}

/** A program in the place of a browser. */
async function standIn(body: string): Promise<{ path: string; folder: string }> {
  const folder = await mkdtemp(join(tmpdir(), 'brimful-standin-'));
  const path = join(folder, 'browser');
  await writeFile(path, `#!/bin/sh\n${body}\n`);
  await chmod(path, 0o755);
  return { path, folder };
}

test('the face is drawn on the local host and its code is used up', async ({ app, browser }) => {
  await expect(app.page).toHaveTitle(/Brimful/);
  expect(new URL(app.page.url()).search).toBe('');
  const stranger = await browser.newContext();
  const answer = await stranger.request.get(app.host.address, { maxRedirects: 0 });
  expect(answer.status()).toBe(403);
  await stranger.close();
});

test('no script from outside the page runs under its policy', async ({ page }) => {
  const host = await startHost();
  try {
    await page.goto(host.address);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      let refused = false;
      try {
        script.textContent = 'window.injected = true';
        document.body.append(script);
      } catch {
        refused = true;
      }
      return { refused, injected: 'injected' in globalThis };
    });
    expect(ran.injected).toBe(false);
  } finally {
    await host.stop();
  }
});

test('calls from the page are answered, and a sheet becomes a PDF in the events folder', async ({ app }) => {
  const post = (method: string, input: unknown) => app.page.evaluate(async ([name, body]) => {
    const response = await fetch(`/rpc/${name}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
    return (await response.json()) as { ok: boolean; value: { path: string; pages: number; host: string } };
  }, [method, input] as const);
  expect(await post('app.info', {})).toMatchObject({ ok: true, value: { host: 'local' } });
  const made = await post('print.pdf', { html: '<!doctype html><title>t</title><p>Half-moon fritters', name: 'Fry list', path: null });
  expect(made).toEqual({ ok: true, value: { path: join(app.host.eventsFolder, 'Fry list.pdf'), pages: 1 } });
  expect((await readFile(made.value.path)).subarray(0, 5).toString()).toBe('%PDF-');
});

test('without a display it prints the address and what to do, and ends with an error', async () => {
  const { code, err } = await run('src-main/launch.mjs', [], {});
  expect(code).toBe(1);
  expect(err).toContain('desktop runtime is not on this computer');
  expect(err).toMatch(/no screen.*http:\/\/127\.0\.0\.1:\d+/s);
  expect(err).toContain('--serve');
});

test('without a browser it prints the address and what to do, and ends with an error', async () => {
  const { code, err } = await run('out/main/local.js', [], { BRIMFUL_BROWSER: 'none', DISPLAY: ':9' });
  expect(code).toBe(1);
  expect(err).toMatch(/No browser.*http:\/\/127\.0\.0\.1:\d+/s);
});

test('a browser that ends at once is a failure that is told', async () => {
  const fake = await standIn('exit 0');
  const { code, err } = await run('out/main/local.js', [], { BRIMFUL_BROWSER: fake.path, DISPLAY: ':9' });
  await rm(fake.folder, { recursive: true });
  expect(code).toBe(1);
  expect(err).toContain('ended before the window was drawn');
});

test('ending the host ends its browser, removes the profile and gives the place free', async () => {
  const fake = await standIn('echo $$ > "$(dirname "$0")/pid"; for a in "$@"; do echo "$a" >> "$(dirname "$0")/args"; done; sleep 60 & wait');
  const { code, out } = await run('out/main/local.js', [], { BRIMFUL_BROWSER: fake.path, DISPLAY: ':9' }, 'its own window', async (pid) => {
    await expect.poll(() => stat(join(fake.folder, 'args')).then(() => true, () => false)).toBe(true);
    process.kill(pid, 'SIGTERM');
  });
  const args = (await readFile(join(fake.folder, 'args'), 'utf8')).split('\n');
  const profile = args.find((argument) => argument.startsWith('--user-data-dir='))?.split('=')[1] ?? '';
  const browserPid = Number(await readFile(join(fake.folder, 'pid'), 'utf8'));
  await rm(fake.folder, { recursive: true });
  expect({ code, told: /Close the window or press Ctrl\+C/.test(out) }).toEqual({ code: 0, told: true });
  expect(args[0]).toMatch(/^--app=file:.*\/start\.html$/);
  expect(args.join(' ')).not.toContain('?start=');
  expect(() => process.kill(browserPid, 0)).toThrow('ESRCH');
  await expect(readdir(profile)).rejects.toThrow('ENOENT');
});

test('the window is really drawn: from the start page on the disk, through the one-time code, with its strict cookie', async () => {
  // The browser ends by itself after it has drawn the page; the host then ends well only if a request with the cookie had come.
  const fake = await standIn(`timeout 20 "${findBrowser() ?? ''}" --headless=new --disable-gpu --screenshot="$(dirname "$0")/seen.png" --virtual-time-budget=4000 $(for a in "$@"; do case "$a" in --app=*) echo "\${a#--app=}";; *) echo "$a";; esac; done)`);
  const { code, err } = await run('out/main/local.js', [], { BRIMFUL_BROWSER: fake.path, DISPLAY: ':9' });
  await rm(fake.folder, { recursive: true });
  expect({ code, err }).toEqual({ code: 0, err: '' });
});

test('a second start hands its file to the window of the first and says so', async ({ app }) => {
  const { page, host } = app;
  const file = join(host.dataFolder, 'handed.brimful');
  await writeFile(file, await readFile('assets/app/demo/school-fair-stall.brimful'));
  await expect(page.locator('[data-demo]')).toHaveCount(3);
  const second = await run('out/main/local.js', [file], { BRIMFUL_DATA_DIR: host.dataFolder });
  expect(second).toMatchObject({ code: 0, err: '' });
  expect(second.out).toContain(`${file} opens in its window`);
  await expect(page).toHaveTitle(/School fair stall/);
});

test('a second start that serves gets an address that opens, as JSON', async ({ page }) => {
  const host = await startHost();
  const file = join(host.dataFolder, 'handed.brimful');
  await writeFile(file, await readFile('assets/app/demo/school-fair-stall.brimful'));
  const second = await run('out/main/local.js', ['--serve', file], { BRIMFUL_DATA_DIR: host.dataFolder });
  const { address } = JSON.parse(second.out.split('\n')[0] ?? '') as { address: string };
  expect(second.code).toBe(0);
  await page.goto(address);
  await expect(page).toHaveTitle(/School fair stall/);
  await page.close();
  await host.stop();
});

test('a second start takes the place of one that was killed', async () => {
  const dataFolder = await mkdtemp(join(tmpdir(), 'brimful-test-'));
  await writeFile(join(dataFolder, 'local.lock'), JSON.stringify({ pid: process.pid, address: 'http://127.0.0.1:9', secret: 'gone' }));
  const host = await startHost({ dataFolder });
  expect(host.address).toMatch(/\?start=/);
  await host.stop();
  expect(await readdir(dataFolder)).not.toContain('local.lock');
  await rm(dataFolder, { recursive: true, force: true });
});
