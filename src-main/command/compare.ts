import { compareText } from '../../shared/changes';
import { plan } from '../../shared/plan';
import { readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import { BadInput, exits } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful compare FILE FILE`: what moved between two plans, in the formats of the second event. */
export const compareCommand: Command = {
  usage: tell('command.usage.compare'),
  run: async (args, terminal) => {
    const [before, after] = readOptions(args, {}, 2).files;
    if (before === undefined || after === undefined) throw new BadInput(tell('command.needs-two-files'));
    const [first, second] = [await readEventFile(before, terminal), await readEventFile(after, terminal)];
    terminal.out(compareText(plan(first), plan(second), formatsOf(second)).trimEnd());
    return exits.ok;
  },
};
