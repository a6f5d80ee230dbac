import { delimiter, join, posix, win32 } from 'node:path';
import type { Surroundings } from '../place';

const unixNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge', 'microsoft-edge-stable'];
const macBundles = ['Google Chrome.app/Contents/MacOS/Google Chrome', 'Chromium.app/Contents/MacOS/Chromium', 'Microsoft Edge.app/Contents/MacOS/Microsoft Edge'];
const windowsPlaces = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe', 'Chromium\\Application\\chrome.exe'];

/** Where a browser that can show the window and print may lie, best first. What the person named comes before anything found. */
export function browserCandidates(env: Surroundings, platform: string, home: string): string[] {
  const named = env['BRIMFUL_BROWSER'];
  return [...(named === undefined || named === '' ? [] : [named]), ...installed(env, platform, home)];
}

function installed(env: Surroundings, platform: string, home: string): string[] {
  if (platform === 'win32') {
    const roots = ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData', 'LOCALAPPDATA'].flatMap((name) => env[name] ?? []);
    return roots.flatMap((root) => windowsPlaces.map((place) => win32.join(root, place)));
  }
  if (platform === 'darwin') return ['/Applications', posix.join(home, 'Applications')].flatMap((root) => macBundles.map((bundle) => posix.join(root, bundle)));
  const folders = new Set(['/usr/bin', '/usr/local/bin', '/snap/bin', ...(env['PATH'] ?? '').split(delimiter).filter((folder) => folder.startsWith('/'))]);
  return unixNames.flatMap((name) => [...folders].map((folder) => join(folder, name)));
}
