import { eventSchema, formatsFor } from '../../shared/event';
import { factorFor, scaleImported, scaleOwn, yieldOfOwn } from '../../shared/exchange';
import type { FormatsOf, ImportedYield, ScaledRecipe, WantedSize } from '../../shared/exchange';
import { amountText } from '../../shared/measure';
import { sayMessage } from '../../shared/words';
import { plainFormats } from '../problem';
import { readOptions } from './options';
import type { Given } from './options';
import { recipesMeant } from './named-recipe';
import { chooseRecipe } from './read-recipe';
import { BadInput, exits } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful scale RECIPE --portions N | --yield "3 kg" | --factor 3.48 [--units us|metric] [--recipe NAME] [--json]` */
export const scaleCommand: Command = {
  usage: tell('command.usage.scale'),
  run: async (args, terminal) => {
    const given = readOptions(args, { portions: 'string', yield: 'string', factor: 'string', units: 'string', recipe: 'string', json: 'boolean' }, 1);
    const [file] = given.files;
    if (file === undefined) throw new BadInput(tell('command.scale.needs-file'));
    const wanted = wantedSize(given);
    const system = unitsOption(given.text('units'));
    const recipe = chooseRecipe(await recipesMeant(file, terminal), given.text('recipe'));
    const made = 'own' in recipe ? yieldOfOwn(recipe.own) : recipe.imported.yield;
    const found = factorFor(wanted, made);
    if ('problem' in found) throw new BadInput(sayMessage(plainFormats, found.problem));
    for (const note of found.notes) terminal.err(sayMessage(plainFormats, note));
    const scaled = 'own' in recipe ? scaleOwn(recipe.own, found.factor, formatsOf, system) : scaleImported(recipe.imported, found.factor, formatsOf, system);
    terminal.out(given.flag('json') ? JSON.stringify(scaled, null, 2) : [asText(scaled), ...('portions' in wanted ? portionLine(made) : [])].join('\n'));
    return exits.ok;
  },
};

const formatsOf: FormatsOf = (units) => formatsFor(eventSchema.shape.preferences.parse({ units }), '2026-01-01');

/** Exactly one of the three ways to say how much. @throws BadInput */
function wantedSize(given: Given): WantedSize {
  const [portions, made, factor] = [given.text('portions'), given.text('yield'), given.text('factor')];
  const sizes = [...(portions === undefined ? [] : [{ portions }]), ...(made === undefined ? [] : [{ yield: made }]), ...(factor === undefined ? [] : [{ factor }])];
  const [size] = sizes;
  if (size === undefined || sizes.length > 1) throw new BadInput(tell('command.scale.needs-size'));
  return size;
}

function unitsOption(given: string | undefined): 'us' | 'metric' | undefined {
  if (given === undefined || given === 'us' || given === 'metric') return given;
  throw new BadInput(tell('command.scale.units', { given }));
}

/** What a portion counted with is: the recipe's own, where it says how much it makes in all. */
function portionLine({ portions, made }: ImportedYield): string[] {
  if (portions === undefined || made === undefined || portions.low.lte(0)) return [];
  return [tell('command.scale.portion', { portion: plainFormats.amount(amountText({ amount: made.amount.low.div(portions.low), unit: made.unit })) })];
}

const asLines = (texts: readonly string[]): string[] => texts.map((text) => tell('command.scale.line', { text }));

function asText({ name, factor, ingredients, unread }: ScaledRecipe): string {
  return [
    tell('command.scale.heading', { name, factor: plainFormats.number(Number(factor), 3) }),
    ...asLines(ingredients.map((line) => line.text)),
    ...(unread.length === 0 ? [] : [tell('command.scale.unread'), ...asLines(unread)]),
  ].join('\n');
}
