// Finds or installs what the tests need beyond npm packages, and says what it does.
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const say = (line) => process.stdout.write(`${line}\n`);
const isRoot = process.getuid?.() === 0;
const isDebian = existsSync('/etc/debian_version');
const quiet = { DEBIAN_FRONTEND: 'noninteractive' };

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

const onPath = (name) => (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, name)).find(isProgram) ?? null;

/** The host's own finding order, read from its source. */
async function find() {
  const { tsImport } = await import('tsx/esm/api');
  const { findBrowser } = await tsImport('../src-main/browser/index.ts', import.meta.url);
  return findBrowser();
}

async function installDebian(run, packages) {
  say(`Installing ${packages.join(' and ')} from Debian...`);
  if ((await run('apt-get', ['update', '-qq'], quiet)) !== 0) return false;
  return (await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], quiet)) === 0;
}

/** A browser for the tests, or null after a sentence about what to do. */
export async function obtainBrowser(run) {
  let found = await find();
  if (found === null && isRoot && isDebian) {
    await installDebian(run, ['chromium', 'poppler-utils']);
    found = await find();
  }
  if (found === null) {
    say('No browser found. Fetching one with: npx playwright install chromium');
    await run(process.execPath, [join('node_modules', 'playwright-core', 'cli.js'), 'install', 'chromium']);
    found = existsSync(chromium.executablePath()) ? chromium.executablePath() : null;
  }
  say(found === null
    ? 'No browser could be found or installed. Install Chromium, Chrome or Edge (Debian: apt-get install chromium poppler-utils), or set BRIMFUL_BROWSER to the path of one, and run npm test again.'
    : `Browser: ${found}`);
  return found;
}

/** pdfinfo and pdftotext, with which printed sheets are read back. */
export async function obtainPoppler(run) {
  if (onPath('pdfinfo') === null && isRoot && isDebian) await installDebian(run, ['poppler-utils']);
  const found = onPath('pdfinfo');
  say(found === null ? 'poppler-utils is not installed: the tests that read PDFs back are left out or fail, as each says.' : `PDF reader: ${found}`);
  return found;
}
