import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { allCalls, makeHandle } from '../answer';
import { findBrowser, hasDisplay, openAppWindow } from '../browser';
import type { AppWindow } from '../browser';
import { dataFolder, demoFolder, eventsFolder, projectFolder, rendererFolder } from '../place';
import { openPrinter } from '../print';
import { tell } from '../problem';
import { openStore } from '../store';
import { HandedFiles } from './handed-files';
import { askHolder } from './hand-over';
import type { Handed } from './hand-over';
import { localShell } from './local-shell';
import { newSecret } from './pass';
import { serveLocally } from './server';
import { takeLock } from './single-lock';
import { untilStopped } from './until-stopped';

/** How a local host is started. */
export interface LocalOptions {
  /** Keep serving without a window: the first line of output is JSON with the address. */
  readonly serve: boolean;
  readonly openPath: string | null;
}

type Say = (line: string) => void;
const out: Say = (line) => void process.stdout.write(`${line}\n`);
const err: Say = (line) => void process.stderr.write(`${line}\n`);

/** Runs the local host until its window is closed or it is told to stop. Answers the exit code. */
export async function runLocal(options: LocalOptions): Promise<number> {
  const project = projectFolder();
  const pages = rendererFolder(project);
  if (!existsSync(join(pages, 'index.html'))) {
    err(`${tell('host.start.not-built')} ${tell('host.start.not-built.mend')}`);
    return 1;
  }
  const data = dataFolder();
  const store = await openStore({ data, events: eventsFolder(), demos: demoFolder(project) });
  const browser = findBrowser();
  const printer = openPrinter(browser);
  const stopped = untilStopped();
  let asked = false;
  const handed = new HandedFiles(options.openPath);
  const secret = newSecret();
  const shell = localShell({ version: versionOf(project), handed, printer, close: () => (options.serve ? undefined : stopped.stop()) });
  const server = await serveLocally({ pages, handle: makeHandle(allCalls(store, shell)), seen: () => (asked = true), handOver: { secret, take: (path) => handed.give(path) } });
  const address = `http://127.0.0.1:${server.port}`;
  let window: AppWindow | undefined;
  const lock = await takeLock(join(data, 'local.lock'), { pid: process.pid, address, secret }, (holder) => askHolder(holder, options.openPath));
  try {
    if ('heldBy' in lock) return second(lock.heldBy, lock.said, options);
    if (options.serve) {
      out(JSON.stringify({ address: server.startAddress }));
      await stopped.promise;
      return 0;
    }
    const hindrance = browser === null ? 'host.start.no-browser' : hasDisplay(process.env, process.platform) ? null : 'host.start.no-display';
    if (hindrance !== null || browser === null) {
      const id = hindrance ?? 'host.start.no-browser';
      err(`${tell(id, { address })}\n${tell(`${id}.mend`)}`);
      return 1;
    }
    window = await openAppWindow(browser, server.startAddress);
    out(tell('host.start.open', { address }));
    await Promise.race([window.ended, stopped.promise]);
    if (asked || stopped.isStopped()) return 0;
    err(`${tell('host.start.window-failed', { address, browser })}\n${tell('host.start.window-failed.mend')}`);
    return 1;
  } finally {
    await Promise.all([window?.close(), printer.close(), server.stop()]);
    if ('lock' in lock) await lock.lock.release();
  }
}

/** A start while another host runs: that one has the file now, and gave an address that opens. */
function second(address: string, said: Exclude<Handed, 'gone'>, options: LocalOptions): number {
  if (said === 'silent') {
    err(`${tell('host.start.silent', { address })}\n${tell('host.start.silent.mend')}`);
    return 1;
  }
  if (options.serve) out(JSON.stringify({ address: said.address }));
  else if (!said.shown) out(tell('host.start.already-unseen', { address: said.address }));
  else out(options.openPath === null ? tell('host.start.already') : tell('host.start.already-file', { path: options.openPath }));
  return 0;
}

/** The program's version, from package.json. */
function versionOf(project: string): string {
  const facts: unknown = JSON.parse(readFileSync(join(project, 'package.json'), 'utf8'));
  return typeof facts === 'object' && facts !== null && 'version' in facts ? String(facts.version) : '0';
}
