import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { problemOf } from '../problem';
import { runLocal } from './run';

// Entry of the local host: `node out/main/local.js [--serve] [FILE]`.
try {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { serve: { type: 'boolean', default: false } } });
  const [file] = positionals;
  process.exitCode = await runLocal({ serve: values.serve, openPath: file === undefined ? null : resolve(file) });
} catch (error) {
  const { message, mend } = problemOf(error);
  process.stderr.write(`${message}\n${mend === undefined ? '' : `${mend}\n`}`);
  process.exitCode = 1;
}
