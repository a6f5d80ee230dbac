import { spawn } from 'node:child_process';
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { build } from 'vite';
import { openStore } from '../../src-main/store';
import { versionIn } from './numbered-text';

/** What many kills did to the file. */
export interface KillCount {
  readonly kills: number;
  /** Neither the old nor the new version: cut short, mixed or empty. */
  readonly torn: number;
  /** A save that was reported as done and is not there. */
  readonly lost: number;
  /** The version before is torn. */
  readonly tornBackups: number;
  /** The version before is missing, or is neither the file's own version nor the one just before it. */
  readonly strayBackups: number;
  /** Kills that left a temporary file behind. */
  readonly leftovers: number;
  /** Leftovers still there after the store was opened again. */
  readonly unswept: number;
}

/** The same delays for the same start number (mulberry32). */
export function delaysFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Saves in a child process and kills it 0-25 ms after its first reported save, again and again, each time in a fresh folder. */
export async function killWhileSaving(rounds: number, start: number): Promise<KillCount> {
  const delay = delaysFrom(start);
  const child = await builtChild();
  const count = { kills: 0, torn: 0, lost: 0, tornBackups: 0, strayBackups: 0, leftovers: 0, unswept: 0 };
  for (let round = 0; round < rounds; round += 1) {
    const folder = await mkdtemp(join(tmpdir(), 'brimful-kill-'));
    const path = join(folder, 'feast.brimful');
    const reported = await saveUntilKilled(child, path, delay() * 25);
    count.kills += 1;
    const version = versionIn(await readFile(path, 'utf8').catch(() => ''));
    if (version === null) count.torn += 1;
    else if (version < reported) count.lost += 1;
    const backup = await readFile(`${path}.bak`, 'utf8').catch(() => null);
    const before = backup === null ? 0 : versionIn(backup);
    if (before === null) count.tornBackups += 1;
    // The backup is put in place first: killed in between, both are the same version.
    else if (version !== null && before !== version - 1 && before !== version) count.strayBackups += 1;
    if ((await leftoversIn(folder)) > 0) count.leftovers += 1;
    await openStore({ data: join(folder, 'data'), events: folder, demos: folder });
    count.unswept += await leftoversIn(folder);
    await rm(folder, { recursive: true, force: true });
  }
  return count;
}

const leftoversIn = async (folder: string): Promise<number> => (await readdir(folder)).filter((name) => name.endsWith('.brimful-tmp')).length;

/** The saving process as one plain script: starting it a thousand times must not cost a thousand compilations. */
async function builtChild(): Promise<string> {
  const outDir = resolve(import.meta.dirname, '../../out/faults');
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: resolve(import.meta.dirname, 'saving-child.ts'), outDir, emptyOutDir: false, target: 'node20', rollupOptions: { output: { entryFileNames: 'saving-child.mjs' } } },
  });
  return join(outDir, 'saving-child.mjs');
}

/** Answers the last version the child reported as saved. */
function saveUntilKilled(script: string, path: string, delayMs: number): Promise<number> {
  return new Promise((settle, reject) => {
    const child = spawn(process.execPath, [script, path], { stdio: ['ignore', 'pipe', 'inherit'] });
    let last = 0;
    createInterface(child.stdout).on('line', (line) => {
      if (last === 0) setTimeout(() => child.kill('SIGKILL'), delayMs);
      last = Number(line);
    });
    child.once('error', reject);
    // 'close' comes after the last line was read.
    child.once('close', (_code, signal) => (signal === 'SIGKILL' ? settle(last) : reject(new Error('the saving process ended by itself'))));
  });
}
