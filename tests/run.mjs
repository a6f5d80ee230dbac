// `npm test`: obtains what the tests need and says so, runs every step, closes with `N passed, N failed`.
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { obtainBrowser, obtainPoppler } from './obtain.mjs';

const root = join(import.meta.dirname, '..');
const bin = (name) => join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);
const reports = join(root, 'out', 'reports');
const summary = join(root, 'out', 'test-summary.txt');
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';

rmSync(summary, { force: true });
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

function run(program, args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, ...env }, shell: process.platform === 'win32' });
    child.once('error', (error) => {
      process.stdout.write(`${error.message}\n`);
      resolve(1);
    });
    child.once('exit', (code) => resolve(code ?? 1));
  });
}

const readReport = (name) => JSON.parse(readFileSync(join(reports, name), 'utf8'));
const one = (code) => ({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 });

/** Counts of a report; a run that failed without a failing test (a crash, a file that cannot be loaded) counts as one failure. */
function counted(code, name, read) {
  try {
    const { passed, failed } = read(readReport(name));
    return { passed, failed: code !== 0 && failed === 0 ? 1 : failed };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

async function vitest() {
  const name = 'vitest.json';
  const code = await run(bin('vitest'), ['run', '--reporter=dot', '--reporter=json', `--outputFile.json=${join(reports, name)}`]);
  return counted(code, name, (report) => ({
    passed: report.numPassedTests,
    // A file that could not be loaded has no failing test of its own.
    failed: report.numFailedTests + report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length,
  }));
}

async function playwright(browser) {
  if (browser === null) return one(1);
  const name = 'playwright.json';
  const code = await run(bin('playwright'), ['test', '--reporter=list,json'], { BRIMFUL_BROWSER: browser, PLAYWRIGHT_JSON_OUTPUT_NAME: join(reports, name) });
  return counted(code, name, ({ stats }) => ({ passed: stats.expected, failed: stats.unexpected + stats.flaky }));
}

const script = (name) => async () => one(await run(npm, ['run', '--silent', name]));
let browser = null;
/** @type {[string, () => Promise<{ passed: number, failed: number }>][]} */
const steps = [
  ['what the tests need', async () => {
    browser = await obtainBrowser(run);
    await obtainPoppler(run);
    return one(browser === null ? 1 : 0);
  }],
  ['types', script('types')],
  ['lint', script('lint')],
  ['floors', script('lint:floors')],
  ['docstrings and file sizes', script('lint:docs')],
  ['unit, sources, faults', vitest],
  ['build', script('build')],
  ['faces', () => playwright(browser)],
];

const total = { passed: 0, failed: 0 };
const lines = [];
for (const [name, step] of steps) {
  process.stdout.write(`\n== ${name}\n`);
  const began = Date.now();
  const { passed, failed } = await step();
  total.passed += passed;
  total.failed += failed;
  lines.push(`${failed === 0 ? 'ok  ' : 'FAIL'} ${name}: ${passed} passed, ${failed} failed (${Math.round((Date.now() - began) / 1000)} s)`);
  process.stdout.write(`${lines.at(-1)}\n`);
}

const closing = `${total.passed} passed, ${total.failed} failed`;
writeFileSync(summary, `${closing}\n`);
process.stdout.write(`\n${lines.join('\n')}\n\n${closing}\n`);
process.exitCode = total.failed === 0 ? 0 : 1;
