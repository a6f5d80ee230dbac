import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';

/** A local host of its own, with a fresh data folder. */
export interface StartedHost {
  /** The one-time address for the first page. */
  readonly address: string;
  /** Settings, recent files, unsaved copies. */
  readonly dataFolder: string;
  /** Where events are saved. */
  readonly eventsFolder: string;
  stop(): Promise<void>;
}

/** Starts the built local host without a window. `open`: an event file to start with. `dataFolder`: use this one and leave it in place. */
export async function startHost(options: { open?: string; dataFolder?: string } = {}): Promise<StartedHost> {
  const dataFolder = options.dataFolder ?? (await mkdtemp(join(tmpdir(), 'brimful-test-')));
  const child = spawn(process.execPath, [resolve('out/main/local.js'), '--serve', ...(options.open ? [options.open] : [])], {
    env: { ...process.env, BRIMFUL_DATA_DIR: dataFolder },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let complaint = '';
  child.stderr.on('data', (piece: Buffer) => (complaint += piece.toString()));
  const ended = new Promise<void>((settle) => child.once('exit', () => settle()));
  const address = await new Promise<string>((settle, reject) => {
    // Only the first line: it is the address, and nothing else is promised.
    createInterface(child.stdout).once('line', (line) => settle((JSON.parse(line) as { address: string }).address));
    child.once('exit', (code) => reject(new Error(`the local host ended with ${code}: ${complaint}`)));
  });
  return {
    address,
    dataFolder,
    eventsFolder: join(dataFolder, 'events'),
    stop: async () => {
      child.kill('SIGTERM');
      await ended;
      if (options.dataFolder === undefined) await rm(dataFolder, { recursive: true, force: true });
    },
  };
}
