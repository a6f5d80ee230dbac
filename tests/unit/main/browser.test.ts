import { chmod, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { browserCandidates, findBrowser, hasDisplay, isBoxed, isProgram, openAppWindow, rootFlags, windowArguments } from '../../../src-main/browser';
import { dataFolder, eventsFolder, projectFolder } from '../../../src-main/place';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-browser-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe('finding a browser', () => {
  it('takes what the person named before anything found', async () => {
    const mine = join(folder, 'mine');
    await writeFile(mine, '#!/bin/sh\n');
    await chmod(mine, 0o755);
    expect(findBrowser({ BRIMFUL_BROWSER: mine, PATH: '' }, 'linux', folder)).toBe(mine);
  });

  it('follows no variable of another program', async () => {
    const theirs = join(folder, 'theirs');
    await writeFile(theirs, '#!/bin/sh\n');
    await chmod(theirs, 0o755);
    const env = Object.fromEntries(Object.keys(process.env).concat('PLAYWRIGHT_CHROMIUM_PATH', 'CHROME_PATH', 'CHROME_BIN').map((name) => [name, theirs]));
    expect(browserCandidates({ ...env, BRIMFUL_BROWSER: '', PATH: '' }, 'linux', folder)).not.toContain(theirs);
  });

  it('passes over files that are no programs', async () => {
    const text = join(folder, 'text');
    await writeFile(text, '');
    expect(isProgram(text)).toBe(false);
    expect(isProgram(folder)).toBe(false);
    expect(findBrowser({ BRIMFUL_BROWSER: text }, 'linux', folder)).not.toBe(text);
  });

  it('can be told that there is none', () => {
    expect(findBrowser({ BRIMFUL_BROWSER: 'none' })).toBeNull();
  });

  it('looks in the usual places of each system', () => {
    expect(browserCandidates({ PATH: '/opt/bin:relative' }, 'linux', '/home/x')).toEqual(expect.arrayContaining(['/usr/bin/chromium', '/snap/bin/chromium', '/opt/bin/google-chrome']));
    expect(browserCandidates({ PATH: 'relative' }, 'linux', '/home/x').every((path) => path.startsWith('/'))).toBe(true);
    expect(browserCandidates({}, 'darwin', '/Users/x')).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(browserCandidates({ ProgramFiles: 'C:\\Program Files' }, 'win32', 'C:\\Users\\x')).toContain('C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe');
  });

  it('prefers Chromium to Edge', () => {
    const list = browserCandidates({}, 'linux', '/home/x');
    expect(list.indexOf('/usr/bin/chromium')).toBeLessThan(list.indexOf('/usr/bin/microsoft-edge'));
  });
});

describe('the window', () => {
  it('has a profile of its own and is sandboxed for everybody but root', () => {
    const args = windowArguments('http://127.0.0.1:1/?start=x', '/tmp/p', 1000);
    expect(args).toEqual(expect.arrayContaining(['--app=http://127.0.0.1:1/?start=x', '--user-data-dir=/tmp/p', '--disable-sync']));
    expect(args).not.toContain('--no-sandbox');
    expect(windowArguments('http://127.0.0.1:1', '/tmp/p', 0)).toEqual(expect.arrayContaining(['--no-sandbox', '--test-type']));
    expect(rootFlags(undefined)).toEqual([]);
  });

  it('is started without the code in its arguments, by a page only its owner can read', async () => {
    const browser = join(folder, 'browser');
    await writeFile(browser, '#!/bin/sh\nfor a in "$@"; do echo "$a" >> "$(dirname "$0")/args"; done\nsleep 30 & wait\n');
    await chmod(browser, 0o755);
    const window = await openAppWindow(browser, 'http://127.0.0.1:1/?start=the-code');
    await vi.waitFor(async () => expect(await readFile(join(folder, 'args'), 'utf8')).toContain('--window-size'));
    const args = await readFile(join(folder, 'args'), 'utf8');
    expect(args).not.toContain('the-code');
    const page = fileURLToPath(/--app=(file:.*)/.exec(args)?.[1] ?? '');
    expect((await stat(page)).mode & 0o777).toBe(0o600);
    expect(await readFile(page, 'utf8')).toContain('content="0;url=http://127.0.0.1:1/?start=the-code"');
    await window.close();
    await expect(stat(page)).rejects.toThrow('ENOENT');
  });

  it('of a browser shut into a box of its own gets the address, for it sees no page of ours', async () => {
    const wrapper = join(folder, 'chromium-browser');
    await writeFile(wrapper, '#!/bin/sh\nexec /snap/bin/chromium "$@"\n');
    const plain = join(folder, 'chromium');
    await writeFile(plain, '#!/bin/sh\nexec /usr/lib/chromium/chromium "$@"\n');
    expect(await Promise.all([wrapper, '/snap/bin/chromium', plain, join(folder, 'gone')].map(isBoxed))).toEqual([true, true, false, false]);
  });

  it('needs a display on Linux only', () => {
    expect(hasDisplay({}, 'linux')).toBe(false);
    expect(hasDisplay({ DISPLAY: ':0' }, 'linux')).toBe(true);
    expect(hasDisplay({ WAYLAND_DISPLAY: 'wayland-0' }, 'linux')).toBe(true);
    expect(hasDisplay({}, 'darwin')).toBe(true);
  });
});

describe('places', () => {
  it.each([
    [{}, 'linux', '/home/x/.config/brimful'], [{ XDG_CONFIG_HOME: '/c' }, 'linux', '/c/brimful'],
    [{}, 'darwin', '/home/x/Library/Application Support/Brimful'], [{ BRIMFUL_DATA_DIR: '/d' }, 'linux', '/d'],
  ])('keeps data of %j on %s in %s', (env, platform, expected) => {
    expect(dataFolder(env, platform, '/home/x')).toBe(expected);
  });

  it('moves the events folder along with the data folder', () => {
    expect(eventsFolder({}, '/home/x')).toBe('/home/x/Documents/Brimful');
    expect(eventsFolder({ BRIMFUL_DATA_DIR: '/d' }, '/home/x')).toBe('/d/events');
  });

  it('finds the project from anywhere inside it', () => {
    expect(projectFolder(import.meta.dirname)).toBe(process.cwd());
    expect(() => projectFolder('/')).toThrow('package.json');
  });
});
