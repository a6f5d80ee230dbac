import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { quietFlags, rootFlags, userId } from './flags';
import { isBoxed, writeStartPage } from './start-page';

/** A browser showing one address in a window of its own. */
export interface AppWindow {
  /** Settles when the window is closed or the browser ends. */
  readonly ended: Promise<void>;
  /** Ends the browser if it still runs, and removes its profile. */
  close(): Promise<void>;
}

/** True when there is a screen to open a window on. */
export const hasDisplay = (env: Readonly<Record<string, string | undefined>>, platform: string): boolean =>
  platform !== 'linux' || Boolean(env['DISPLAY']) || Boolean(env['WAYLAND_DISPLAY']);

/** The browser's arguments. With a profile of its own the process lives exactly as long as the window. */
export const windowArguments = (address: string, profile: string, uid: number | undefined): string[] =>
  [`--app=${address}`, `--user-data-dir=${profile}`, '--window-size=1280,860', ...quietFlags, ...rootFlags(uid)];

/** Opens the window. */
export async function openAppWindow(browser: string, address: string): Promise<AppWindow> {
  const profile = await mkdtemp(join(tmpdir(), 'brimful-window-'));
  const start = (await isBoxed(browser)) ? address : await writeStartPage(profile, address);
  // Its own process group, so that ending it ends the browser's children too.
  const child = spawn(browser, windowArguments(start, profile, userId()), { stdio: 'ignore', detached: process.platform !== 'win32' });
  const ended = new Promise<void>((resolve) => {
    child.once('exit', () => resolve());
    child.once('error', () => resolve());
  });
  let closing: Promise<void> | undefined;
  const close = async (): Promise<void> => {
    end(child.pid, 'SIGTERM');
    const timer = setTimeout(() => end(child.pid, 'SIGKILL'), 2000);
    if (child.pid !== undefined) await ended;
    clearTimeout(timer);
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 }).catch(() => {});
  };
  return { ended, close: () => (closing ??= close()) };
}

function end(pid: number | undefined, signal: 'SIGTERM' | 'SIGKILL'): void {
  if (pid === undefined) return;
  try {
    process.kill(process.platform === 'win32' ? pid : -pid, signal);
  } catch {
    // It ended by itself.
  }
}
