import { resolve } from 'node:path';
import type { Recipe } from '../../shared/event';
import type { Shelf } from '../../shared/household';
import { modifiedOf } from '../store';
import { readRecipeFile } from './read-recipe';
import type { FileRecipe } from './read-recipe';
import { readShelf, readStarter } from './shelf-file';
import { BadInput } from './terminal';
import type { Terminal } from './terminal';
import { tell } from './words';

/** A recipe of a shelf by short name or name; undefined when it has none. */
export function recipeNamed(shelf: Shelf, given: string): Recipe | undefined {
  const wanted = given.trim().toLowerCase();
  return shelf.recipes.find((recipe) => recipe.id.toLowerCase() === wanted) ?? shelf.recipes.find((recipe) => recipe.name.toLowerCase() === wanted);
}

/**
 * The recipes of a file. Where there is no such file, the recipe of that name: first of the household's shelf, then of those that come with the program.
 * @throws BadInput when there is neither
 */
export async function recipesMeant(given: string, terminal: Terminal): Promise<FileRecipe[]> {
  if ((await modifiedOf(resolve(given))) !== null) return readRecipeFile(given, terminal);
  const own = recipeNamed((await readShelf(undefined, terminal)).shelf, given) ?? recipeNamed(await readStarter(terminal), given);
  if (own === undefined) throw new BadInput(tell('command.scale.not-there', { given, path: resolve(given) }));
  return [{ own }];
}
