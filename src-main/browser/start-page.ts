import { open, realpath, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Writes a page that leads to an address into a folder, readable by its owner only: arguments of programs can be read by everybody on the computer. Answers its address. */
export async function writeStartPage(folder: string, address: string): Promise<string> {
  const path = join(folder, 'start.html');
  await writeFile(path, `<!doctype html><meta charset="utf-8"><title>Brimful</title><meta http-equiv="refresh" content="0;url=${address}">`, { flag: 'wx', mode: 0o600 });
  return pathToFileURL(path).href;
}

/** True for a browser that a package system shuts off from our folders (snap): it cannot read the start page. */
export async function isBoxed(browser: string): Promise<boolean> {
  if (browser.startsWith('/snap/')) return true;
  try {
    if ((await realpath(browser)) === '/usr/bin/snap') return true;
    // Some systems have a small script in the browser's place that starts the shut-off one.
    const file = await open(browser, 'r');
    try {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(4096), 0, 4096, 0);
      return buffer.toString('latin1', 0, bytesRead).startsWith('#!') && buffer.includes('/snap/bin/');
    } finally {
      await file.close();
    }
  } catch {
    return false;
  }
}
