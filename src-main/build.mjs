// Builds what is missing or older than its sources. Plain JavaScript: it runs before anything is built.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';

export const project = dirname(import.meta.dirname);

const parts = {
  // The hosts only: enough for the command line.
  main: { results: ['out/main/command.js', 'out/main/local.js', 'out/main/index.js'], sources: ['shared', 'src-main'] },
  all: {
    results: ['out/main/command.js', 'out/main/local.js', 'out/main/index.js', 'out/preload/preload.cjs', 'out/renderer/index.html'],
    sources: ['shared', 'src-main', 'src-renderer', 'assets'],
  },
};
const settings = ['package.json', 'electron.vite.config.ts'];

const changedAt = (path) => (existsSync(path) ? statSync(path).mtimeMs : 0);

function newest(path) {
  if (!existsSync(path)) return 0;
  const facts = statSync(path);
  if (!facts.isDirectory()) return facts.mtimeMs;
  let latest = facts.mtimeMs;
  for (const name of readdirSync(path)) latest = Math.max(latest, newest(join(path, name)));
  return latest;
}

/** True when a result is missing or older than a source. */
export function isStale(part, folder = project) {
  const { results, sources } = parts[part];
  const oldestResult = Math.min(...results.map((path) => changedAt(join(folder, path))));
  const newestSource = Math.max(...[...sources, ...settings].map((path) => newest(join(folder, path))));
  return oldestResult === 0 || oldestResult < newestSource;
}

function run(part) {
  const tool = join(project, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js');
  if (!existsSync(tool)) return Promise.resolve({ code: 1, text: 'The build tool is missing. Run npm ci first.' });
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [tool, 'build', '--logLevel', 'warn'], {
      cwd: project,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, BRIMFUL_BUILD: part },
    });
    let text = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => (text += piece));
    child.once('error', (error) => resolve({ code: 1, text: String(error) }));
    child.once('close', (code) => resolve({ code: code ?? 1, text }));
  });
}

const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** One build at a time: two commands started together must not write into each other's result. */
async function takeTurn() {
  const flag = join(project, 'out', '.building');
  mkdirSync(join(project, 'out'), { recursive: true });
  for (const began = Date.now(); ; await wait(100)) {
    try {
      mkdirSync(flag);
      return () => rmSync(flag, { recursive: true, force: true });
    } catch {
      // A build that was killed leaves its flag; after a minute it no longer counts.
      if (Date.now() - changedAt(flag) > 60_000 || Date.now() - began > 120_000) rmSync(flag, { recursive: true, force: true });
    }
  }
}

/** Builds a part when it is needed. Answers true when the results are there; what went wrong goes to stderr. */
export async function ensureBuilt(part, say = (line) => process.stderr.write(`${line}\n`)) {
  if (!isStale(part)) return true;
  const done = await takeTurn();
  try {
    if (!isStale(part)) return true;
    say('Building Brimful, a few seconds...');
    const { code, text } = await run(part);
    if (code === 0) return true;
    say(`${text.trim()}\nBrimful could not be built.`);
    return false;
  } finally {
    done();
  }
}
