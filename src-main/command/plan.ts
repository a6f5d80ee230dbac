import { setHeadcount } from '../../shared/edit';
import { planJson, planText } from '../../shared/exchange';
import { plan } from '../../shared/plan';
import { exitOf } from './findings';
import { peopleOption, readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful plan FILE [--adults N] [--children N] [--json]` */
export const planCommand: Command = {
  usage: tell('command.usage.plan'),
  run: async (args, terminal) => {
    const given = readOptions(args, { adults: 'string', children: 'string', json: 'boolean' });
    const adults = peopleOption(given, 'adults');
    const children = peopleOption(given, 'children');
    const read = await readEventFile(given.files[0], terminal);
    const event = adults === undefined && children === undefined ? read
      : setHeadcount(read, { ...(adults === undefined ? {} : { adults }), ...(children === undefined ? {} : { children }) });
    const planned = plan(event);
    terminal.out(given.flag('json') ? JSON.stringify(planJson(planned), null, 2) : planText(planned, formatsOf(event)));
    return exitOf(planned);
  },
};
