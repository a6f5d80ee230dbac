import { mkdir, open, readFile, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import * as z from 'zod';
import { isAlive } from '../store';

const lockSchema = z.object({ pid: z.number().int().positive(), address: z.string() });

/** Held by the one local host of a data folder. */
export interface SingleLock {
  release(): Promise<void>;
}

/** Takes the lock, or answers the address of the host that holds it. A lock whose process is gone is taken over. */
export async function takeLock(path: string, address: string, alive: (pid: number) => boolean = isAlive): Promise<{ lock: SingleLock } | { heldBy: string }> {
  await mkdir(dirname(path), { recursive: true });
  for (let attempt = 0; attempt < 3; attempt += 1) {
    if (await create(path, JSON.stringify({ pid: process.pid, address }))) return { lock: { release: () => rm(path, { force: true }) } };
    const holder = await read(path);
    if (holder !== null && alive(holder.pid)) return { heldBy: holder.address };
    await rm(path, { force: true });
  }
  return { heldBy: '' };
}

async function create(path: string, text: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx', 0o600);
    await file.writeFile(text);
    await file.close();
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
}

async function read(path: string): Promise<z.infer<typeof lockSchema> | null> {
  try {
    return lockSchema.parse(JSON.parse(await readFile(path, 'utf8')));
  } catch {
    return null;
  }
}
