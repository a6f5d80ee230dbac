import { parseEvent, problemsOf, recipeSchema } from '../../shared/event';
import type { EventProblem, Recipe } from '../../shared/event';
import { readRecipes } from '../../shared/exchange';
import type { ImportedRecipe } from '../../shared/exchange';
import { parseShelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import { plainFormats } from '../problem';
import { readFileText } from './read-file';
import { BadInput } from './terminal';
import type { Terminal } from './terminal';
import { tell } from './words';

/** A recipe of a file: in our own form, or read from elsewhere. */
export type FileRecipe = { readonly own: Recipe } | { readonly imported: ImportedRecipe };

const nameOf = (recipe: FileRecipe): string => ('own' in recipe ? recipe.own.name : recipe.imported.name);

/** What is wrong with a file, each problem on its own line. */
export function notRead(path: string, problems: readonly EventProblem[]): BadInput {
  const lines = problems.map((problem) => tell('command.problem', { path: problem.path, message: sayMessage(plainFormats, problem.message) }));
  return new BadInput([tell('command.not-read', { path }), ...lines].join('\n'));
}

type JsonGroup = Readonly<Record<string, unknown>>;

/** The JSON object a text is, or null. */
function groupOf(text: string): JsonGroup | null {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as JsonGroup) : null;
  } catch {
    return null;
  }
}

const isOwnRecipe = (group: JsonGroup): boolean => !('@type' in group) && Array.isArray(group['ingredients']) && 'yield' in group && 'role' in group;

/** Every recipe of a file: an event, a shelf, a recipe in our form, or a text or page with schema.org recipes. @throws BadInput when there is none. */
export async function readRecipeFile(path: string, terminal: Terminal): Promise<FileRecipe[]> {
  const { text } = await readFileText(path);
  const group = groupOf(text);
  const format = typeof group?.['format'] === 'string' ? group['format'] : '';
  if (format.startsWith('brimful-event/')) {
    const read = parseEvent(text);
    if (!read.ok) throw notRead(path, read.problems);
    return read.event.recipes.map((own) => ({ own }));
  }
  if (format.startsWith('brimful-shelf/')) {
    const read = parseShelf(text);
    if (!read.ok) throw notRead(path, read.problems);
    return read.shelf.recipes.map((own) => ({ own }));
  }
  if (group !== null && isOwnRecipe(group)) {
    const read = recipeSchema.safeParse(group);
    if (!read.success) throw notRead(path, problemsOf(read.error.issues, group));
    return [{ own: read.data }];
  }
  const { recipes, problems } = readRecipes(text);
  const sentences = problems.map(({ message }) => sayMessage(plainFormats, message));
  if (recipes.length === 0) throw new BadInput([tell('command.not-read', { path }), ...sentences.map((message) => tell('command.problem', { path: '', message }))].join('\n'));
  for (const sentence of sentences) terminal.err(sentence);
  return recipes.map((imported) => ({ imported }));
}

/** The one recipe meant: by short name, name or number from 1. @throws BadInput when it is not there, or none is named of several. */
export function chooseRecipe(recipes: readonly FileRecipe[], given: string | undefined): FileRecipe {
  const names = recipes.map((recipe) => ('own' in recipe ? recipe.own.id : recipe.imported.name)).join(', ');
  const [only] = recipes;
  if (given === undefined) {
    if (only !== undefined && recipes.length === 1) return only;
    throw new BadInput(recipes.length === 0 ? tell('command.scale.empty') : tell('command.scale.which', { names }));
  }
  const wanted = given.trim().toLowerCase();
  const found = recipes.find((recipe) => 'own' in recipe && recipe.own.id.toLowerCase() === wanted) ?? recipes.find((recipe) => nameOf(recipe).toLowerCase() === wanted)
    ?? (/^\d{1,4}$/.test(wanted) ? recipes[Number(wanted) - 1] : undefined);
  if (found === undefined) throw new BadInput(tell('command.scale.none', { given, names }));
  return found;
}
