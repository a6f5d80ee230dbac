import { app } from 'electron';
import { problemOf } from '../problem';
import { runDesktop } from './run';

// Entry of the desktop program. Not awaited here: Electron becomes ready only after this file has been evaluated to its end.
runDesktop().catch((error: unknown) => {
  process.stderr.write(`${problemOf(error).message}\n`);
  app.exit(1);
});
