import { plan } from '../../shared/plan';
import type { Plan } from '../../shared/plan';
import { amountText } from '../../shared/measure';
import type { Formats } from '../../shared/words';
import { readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import { BadInput, exits } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful compare FILE FILE` */
export const compareCommand: Command = {
  usage: tell('command.usage.compare'),
  run: async (args, terminal) => {
    const [before, after] = readOptions(args, {}).files;
    if (before === undefined || after === undefined) throw new BadInput(tell('command.needs-two-files'));
    const [first, second] = [await readEventFile(before, terminal), await readEventFile(after, terminal)];
    const lines = changedLines(figuresOf(plan(first), formatsOf(second)), figuresOf(plan(second), formatsOf(second)));
    terminal.out(lines.length === 0 ? tell('command.compare.same') : lines.join('\n'));
    return exits.ok;
  },
};

/** The figures two plans are compared by: label and text, in the order they are told. Both in the formats of the second event. */
export function figuresOf(planned: Plan, formats: Formats): ReadonlyMap<string, string> {
  const { guests, menu, buying, frying, drinks, day, safety } = planned;
  const figures: [string, string][] = [
    [tell('command.compare.adults'), formats.figure(guests.adults.value, guests.adults.unit)],
    [tell('command.compare.children'), formats.figure(guests.children.value, guests.children.unit)],
    ...menu.dishes.map((dish): [string, string] => [tell('command.compare.portions', { dish: dish.name }), formats.number(dish.portions.value, 1)]),
    [tell('command.compare.batches'), formats.number(frying.batches.length)],
    [tell('command.compare.bowls'), formats.number(frying.bowls.length)],
    [tell('command.compare.oil'), formats.figure(frying.buyLitres.value, frying.buyLitres.unit)],
    [tell('command.compare.rounds'), formats.number(drinks.rounds.length)],
    ...buying.lines.map((line): [string, string] => [tell('command.compare.buy', { ingredient: line.name }), formats.amount(amountText(line.buy))]),
    [tell('command.compare.tasks'), formats.number(day.tasks.length)],
    [tell('command.compare.findings'), formats.number(safety.findings.length)],
  ];
  return new Map(figures);
}

/** A line for each figure that is not the same. */
export function changedLines(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): string[] {
  const none = tell('command.compare.gone');
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((label) => before.get(label) !== after.get(label))
    .map((label) => tell('command.compare.line', { label, before: before.get(label) ?? none, after: after.get(label) ?? none }));
}
