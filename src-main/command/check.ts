import { plan } from '../../shared/plan';
import { exitOf, printFindings } from './findings';
import { readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful check FILE` */
export const checkCommand: Command = {
  usage: tell('command.usage.check'),
  run: async (args, terminal) => {
    const [file = ''] = readOptions(args, {}, 1).files;
    const event = await readEventFile(file === '' ? undefined : file, terminal);
    const planned = plan(event);
    terminal.out(tell('command.sound', { path: file }));
    printFindings(planned, formatsOf(event), terminal);
    return exitOf(planned);
  },
};
