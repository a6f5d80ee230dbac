// `npm start [-- --browser | --serve] [FILE]`: builds what is needed, then opens the window. Never reaches for the network.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt, project } from './build.mjs';
import { electronProgram } from './electron-there.mjs';

const args = process.argv.slice(2);
const forced = args.includes('--browser') || args.includes('--serve');
const passed = args.filter((argument) => argument !== '--browser');

function start(program, programArgs) {
  const child = spawn(program, programArgs, { stdio: 'inherit', cwd: process.env.INIT_CWD ?? process.cwd() });
  // The child ends itself at these; this process waits for it so that nothing stays behind.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.once('error', (error) => {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  });
  child.once('exit', (code) => {
    process.exitCode = code ?? 1;
  });
}

if (await ensureBuilt('all')) {
  const electron = forced ? null : electronProgram(project);
  if (electron !== null) {
    start(electron, [project, ...passed]);
  } else {
    if (!forced) process.stderr.write('The desktop runtime is not on this computer, so Brimful opens in a window of the installed browser.\n');
    start(process.execPath, [join(project, 'out', 'main', 'local.js'), ...passed]);
  }
} else {
  process.exitCode = 1;
}
