import { link, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { isAlive, makeFolder, temporaryName } from '../store';
import type { Handed } from './hand-over';
import { holderSchema } from './holder';
import type { Holder } from './holder';

/** Held by the one local host of a data folder. */
export interface SingleLock {
  release(): Promise<void>;
}

/** Time in which starts that raced for a stale lock have settled, in milliseconds. */
const settleMs = 50;

/**
 * Takes the lock, or answers what the host that holds it said. One whose host is gone is taken over.
 * `ask` tells whether the holder is there; a holder that is `silent` counts while its process runs.
 */
export async function takeLock(path: string, mine: Holder, ask: (holder: Holder) => Promise<Handed>): Promise<{ lock: SingleLock } | { heldBy: string; said: Exclude<Handed, 'gone'> }> {
  await makeFolder(dirname(path));
  const text = JSON.stringify(mine);
  for (;;) {
    if (await create(path, text)) {
      await new Promise((resolve) => setTimeout(resolve, settleMs));
      if ((await read(path)) === text) return { lock: { release: () => removeOwn(path, text) } };
      continue;
    }
    const there = await read(path);
    if (there === null) continue;
    const holder = parse(there);
    const said = holder === null ? 'gone' : await ask(holder);
    if (holder !== null && said !== 'gone' && (said !== 'silent' || isAlive(holder.pid))) return { heldBy: holder.address, said };
    await removeOwn(path, there);
  }
}

/** Puts the lock in place whole: written aside, then linked. False when there is one already. */
async function create(path: string, text: string): Promise<boolean> {
  const aside = temporaryName(path);
  try {
    await writeFile(aside, text, { flag: 'wx', mode: 0o600 });
    await link(aside, path);
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  } finally {
    await rm(aside, { force: true });
  }
}

/** Removes the lock only when it holds this text: one that another start put in its place meanwhile is put back. */
async function removeOwn(path: string, text: string): Promise<void> {
  if ((await read(path)) !== text) return;
  const aside = temporaryName(path);
  try {
    await rename(path, aside);
    if ((await read(aside)) !== text) await link(aside, path);
  } catch {
    // Another start was faster.
  } finally {
    await rm(aside, { force: true });
  }
}

const read = (path: string): Promise<string | null> => readFile(path, 'utf8').catch(() => null);

function parse(text: string): Holder | null {
  try {
    const parsed = holderSchema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}
