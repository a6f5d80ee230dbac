import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { projectFolder } from '../place';
import { readOptions } from './options';
import { readEventFile } from './read-event';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful open FILE`: the same start as `npm start -- FILE`, after a look whether the file can be read. */
export const openCommand: Command = {
  usage: tell('command.usage.open'),
  run: async (args, terminal) => {
    const [file] = readOptions(args, {}, 1).files;
    await readEventFile(file, terminal);
    return start([resolve(file ?? '')]);
  },
};

/** Runs the launcher until its window is closed; answers its exit code. */
function start(args: readonly string[]): Promise<number> {
  return new Promise((settle, reject) => {
    const child = spawn(process.execPath, [join(projectFolder(), 'src-main', 'launch.mjs'), ...args], { stdio: 'inherit' });
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => child.kill(signal));
    child.once('error', reject);
    child.once('exit', (code) => settle(code ?? 1));
  });
}
