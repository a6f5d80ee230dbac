import { accessSync, constants, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { chromium } from 'playwright-core';
import { browserCandidates } from './candidates';

/** True for a file that may be run. */
export function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** The browser to use, or null. An empty `BRIMFUL_BROWSER=none` says that there is to be none. */
export function findBrowser(env: Readonly<Record<string, string | undefined>> = process.env, platform: string = process.platform, home: string = homedir()): string | null {
  if (env['BRIMFUL_BROWSER'] === 'none') return null;
  return [...browserCandidates(env, platform, home), downloadedBrowser()].find((path) => path !== '' && isProgram(path)) ?? null;
}

/** The browser `npx playwright install chromium` may have fetched. */
function downloadedBrowser(): string {
  try {
    return chromium.executablePath();
  } catch {
    return '';
  }
}
