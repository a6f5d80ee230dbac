import { resolve } from 'node:path';
import type { Recipe } from '../../shared/event';
import { recipeJsonLd, scaleOwn } from '../../shared/exchange';
import { doublesOf, joinDoubles, mergeSentences, mergeShelf, serialiseShelf, shelfFormat } from '../../shared/household';
import type { MergeChoice, Shelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import type { Message } from '../../shared/words';
import { plainFormats } from '../problem';
import { saveAtomically } from '../store';
import { recipeNamed } from './named-recipe';
import { readOptions } from './options';
import type { Given } from './options';
import { readRecipeFile } from './read-recipe';
import { readShelf, writeShelf } from './shelf-file';
import { settledRecipe } from './shelf-import';
import { BadInput, exits } from './terminal';
import type { Command, Terminal } from './terminal';
import { tell } from './words';

/** `brimful shelf list|show|import|export|join` */
export const shelfCommand: Command = {
  usage: tell('command.usage.shelf'),
  run: async (args, terminal) => {
    const given = readOptions(args, { file: 'string', json: 'boolean', 'schema-org': 'boolean', keep: 'string', out: 'string', role: 'string', yield: 'string', portions: 'string' });
    const [what, ...names] = given.files;
    switch (what ?? '') {
      case 'list': return list(given, terminal);
      case 'show': return show(names, given, terminal);
      case 'import': return bringIn(names, given, terminal);
      case 'export': return giveOut(names, given, terminal);
      case 'join': return join(names, given, terminal);
      default: throw new BadInput(tell('command.shelf.what'));
    }
  },
};

async function list(given: Given, terminal: Terminal): Promise<number> {
  const { shelf } = await readShelf(given.text('file'), terminal);
  if (given.flag('json')) terminal.out(JSON.stringify(shelf.recipes.map(({ id, name, role, yield: made }) => ({ id, name, role, yield: made })), null, 2));
  else if (shelf.recipes.length === 0) terminal.out(tell('command.shelf.empty'));
  else for (const { id, name, yield: made } of shelf.recipes) terminal.out(tell('command.shelf.line', { id, name, portions: made.portions, makes: plainFormats.amount(made.amount) }));
  tellDoubles(shelf, terminal);
  return exits.ok;
}

/** Names recipes of one name, so that they are told apart by their short names and joined. */
function tellDoubles(shelf: Shelf, terminal: Terminal): void {
  for (const { first, second } of doublesOf(shelf)) terminal.err(sayMessage(plainFormats, { id: 'shelf.doubles', params: { name: second.name, first: first.id, second: second.id } }));
}

/** Joins a recipe with the one before it of the same name; `--keep` says which stays, both by default. @throws BadInput */
async function join(names: readonly string[], given: Given, terminal: Terminal): Promise<number> {
  const [name] = names;
  if (name === undefined) throw new BadInput(tell('command.shelf.needs-recipe'));
  const keep = choiceOf(given.text('keep'));
  const kept = await readShelf(given.text('file'), terminal);
  const wanted = find(kept.shelf, name);
  const found = doublesOf(kept.shelf).find(({ first, second }) => second.id === wanted.id || first.id === wanted.id);
  if (found === undefined) throw new BadInput(sayMessage(plainFormats, { id: 'shelf.noDouble', params: { given: name } }));
  const shelf = joinDoubles(kept.shelf, found.first.id, found.second.id, keep);
  const now = shelf.recipes.find((recipe) => recipe.id === (keep === 'both' ? found.second.id : found.first.id));
  await writeShelf({ ...kept, shelf });
  terminal.out(sayMessage(plainFormats, { id: `shelf.joined.${keep}`, params: { name: now?.name ?? found.first.name } }));
  terminal.out(tell('command.wrote', { path: kept.path }));
  return exits.ok;
}

/** A recipe of the shelf by short name or name. @throws BadInput */
function find(shelf: Shelf, given: string): Recipe {
  const found = recipeNamed(shelf, given);
  if (found === undefined) throw new BadInput(tell('command.shelf.none', { given }));
  return found;
}

async function show(names: readonly string[], given: Given, terminal: Terminal): Promise<number> {
  const [name] = names;
  if (name === undefined) throw new BadInput(tell('command.shelf.needs-recipe'));
  const { shelf } = await readShelf(given.text('file'), terminal);
  const recipe = find(shelf, name);
  if (given.flag('schema-org')) terminal.out(JSON.stringify(recipeJsonLd(recipe, plainFormats), null, 2));
  else if (given.flag('json')) terminal.out(JSON.stringify(recipe, null, 2));
  else {
    const { id, name: title, yield: made, steps, source, notes } = recipe;
    terminal.out(tell('command.shelf.line', { id, name: title, portions: made.portions, makes: plainFormats.amount(made.amount) }));
    const texts = [...scaleOwn(recipe, 1, () => plainFormats).ingredients.map((line) => line.text), ...steps.map((step, at) => `${at + 1}. ${step.name}`), source, notes ?? ''];
    for (const text of texts) if (text !== '') terminal.out(tell('command.scale.line', { text }));
  }
  return exits.ok;
}

function choiceOf(given: string | undefined): MergeChoice {
  if (given === undefined) return 'both';
  const choices = { both: 'both', mine: 'ours', new: 'theirs' } as const;
  if (given === 'both' || given === 'mine' || given === 'new') return choices[given];
  throw new BadInput(tell('command.shelf.keep', { given }));
}

async function bringIn(files: readonly string[], given: Given, terminal: Terminal): Promise<number> {
  if (files.length === 0) throw new BadInput(tell('command.shelf.needs-file'));
  const keep = choiceOf(given.text('keep'));
  const kept = await readShelf(given.text('file'), terminal);
  let shelf = kept.shelf;
  const done: Message[] = [];
  for (const file of files) {
    const recipes = (await readRecipeFile(file, terminal)).map((recipe) => ('own' in recipe ? recipe.own : settledRecipe(recipe.imported, given, terminal)));
    if (recipes.length === 0) throw new BadInput(tell('command.scale.empty'));
    const merged = mergeShelf(shelf, { format: shelfFormat, recipes }, () => keep);
    if (!merged.ok) throw new BadInput(sayMessage(plainFormats, merged.message));
    shelf = merged.shelf;
    done.push(...mergeSentences(merged.report));
  }
  await writeShelf({ ...kept, shelf });
  // What was done is said when it is done.
  for (const sentence of done) terminal.out(sayMessage(plainFormats, sentence));
  tellDoubles(shelf, terminal);
  terminal.out(tell('command.wrote', { path: kept.path }));
  return exits.ok;
}

/** Some or all recipes as one shelf file or as JSON-LD; to the terminal without `--out`. */
async function giveOut(names: readonly string[], given: Given, terminal: Terminal): Promise<number> {
  const { shelf } = await readShelf(given.text('file'), terminal);
  const recipes = names.length === 0 ? shelf.recipes : names.map((name) => find(shelf, name));
  const linked = recipes.map((recipe) => recipeJsonLd(recipe, plainFormats));
  const text = given.flag('schema-org') ? `${JSON.stringify(linked.length === 1 ? linked[0] : linked, null, 2)}\n` : serialiseShelf({ format: shelfFormat, recipes });
  const out = given.text('out');
  if (out === undefined) terminal.out(text.trimEnd());
  else {
    await saveAtomically(resolve(out), text);
    terminal.out(tell('command.wrote', { path: resolve(out) }));
  }
  return exits.ok;
}
