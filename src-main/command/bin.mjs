#!/usr/bin/env node
// `npx brimful …` in the checkout: builds the hosts when needed, then runs the command. Notices go to stderr only.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt, project } from '../build.mjs';

// Whoever reads our output may stop early (`| head`): that is not a fault.
process.stdout.on('error', (error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(process.exitCode ?? 0);
});

if (await ensureBuilt('main')) {
  const { runCommand } = await import(pathToFileURL(join(project, 'out', 'main', 'command.js')).href);
  process.exitCode = await runCommand(process.argv.slice(2));
} else {
  process.exitCode = 3;
}
