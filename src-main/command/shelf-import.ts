import { roleIds } from '../../shared/event';
import type { Recipe } from '../../shared/event';
import { proposeLine, readYield, toRecipe, weightOfLines } from '../../shared/exchange';
import type { ImportedRecipe } from '../../shared/exchange';
import { amountText } from '../../shared/measure';
import type { AmountText } from '../../shared/measure';
import { sayMessage } from '../../shared/words';
import { plainFormats } from '../problem';
import type { Given } from './options';
import { BadInput } from './terminal';
import type { Terminal } from './terminal';
import { tell } from './words';

/** A short name from a name: letters, digits and dashes. */
const shortName = (name: string): string => name.normalize('NFD').replace(/[\p{M}'’‘`´]/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '').slice(0, 60) || 'recipe';

/** What the recipe makes: as asked for, as it says itself, or the weight of all that goes in. */
function madeAmount(recipe: ImportedRecipe, given: string | undefined, weight: AmountText | null, terminal: Terminal): AmountText {
  const asked = given === undefined ? undefined : readYield(given).made;
  if (given !== undefined && asked === undefined) throw new BadInput(tell('command.shelf.yield', { given }));
  const made = asked ?? recipe.yield.made;
  if (made !== undefined) return amountText({ amount: made.amount.low, unit: made.unit });
  if (weight === null) throw new BadInput(tell('command.shelf.needs-yield', { name: recipe.name }));
  terminal.err(tell('command.shelf.weighed', { name: recipe.name, weight: plainFormats.amount(weight) }));
  return weight;
}

/** A foreign recipe for the shelf, when nothing in it is open. @throws BadInput with every line the cook has to settle. */
export function settledRecipe(recipe: ImportedRecipe, given: Given, terminal: Terminal): Recipe {
  const proposals = recipe.lines.map(proposeLine);
  const open = proposals.filter((proposal) => proposal.settled === null);
  if (open.length > 0) {
    const lines = open.map(({ line, open: what }) => tell('command.shelf.open-line', { text: line.text.trim(), what: what.map((one) => tell(`command.shelf.open.${one}`)).join(', ') }));
    throw new BadInput([tell('command.shelf.open', { name: recipe.name, count: open.length }), ...lines].join('\n'));
  }
  const role = roleIds.find((id) => id === given.text('role'));
  if (role === undefined) throw new BadInput(tell('command.shelf.role', { known: roleIds.join(', ') }));
  const portions = recipe.yield.portions?.low.toNumber() ?? Number(given.text('portions'));
  if (!(portions > 0)) throw new BadInput(tell('command.shelf.needs-portions', { name: recipe.name }));
  const lines = proposals.flatMap(({ settled }) => (settled === null ? [] : [settled]));
  const amount = madeAmount(recipe, given.text('yield'), weightOfLines(lines), terminal);
  const made = toRecipe(recipe, { id: shortName(recipe.name), role, yield: { amount, portions }, lines });
  if (!made.ok) throw new BadInput(made.open.map(({ message }) => sayMessage(plainFormats, message)).join('\n'));
  for (const note of made.notes) terminal.err(sayMessage(plainFormats, note));
  return made.recipe;
}
