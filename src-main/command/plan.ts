import { setHeadcount } from '../../shared/edit';
import { planJson, planText } from '../../shared/exchange';
import { plan } from '../../shared/plan';
import type { Event } from '../../shared/event';
import { sayMessage } from '../../shared/words';
import { exitOf } from './findings';
import { peopleOption, readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import { BadInput } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful plan FILE [--adults N] [--children N] [--json]` */
export const planCommand: Command = {
  usage: tell('command.usage.plan'),
  run: async (args, terminal) => {
    const given = readOptions(args, { adults: 'string', children: 'string', json: 'boolean' }, 1);
    const adults = peopleOption(given, 'adults');
    const children = peopleOption(given, 'children');
    const read = await readEventFile(given.files[0], terminal);
    const event = adults === undefined && children === undefined ? read : forHeadcount(read, adults, children);
    const planned = plan(event);
    terminal.out(given.flag('json') ? JSON.stringify(planJson(planned), null, 2) : planText(planned, formatsOf(event)));
    return exitOf(planned);
  },
};

/** The event with another headcount; the number not given stays what it is. @throws BadInput */
function forHeadcount(event: Event, adults: number | undefined, children: number | undefined): Event {
  const { headcount } = event.guests;
  const edited = setHeadcount(event, adults ?? headcount.adults, children ?? headcount.children);
  if ('problem' in edited) throw new BadInput(sayMessage(formatsOf(event), edited.problem));
  return edited.event;
}
