import { readFileSync } from 'node:fs';
import type { Recipe } from '../../../shared/event';
import { parseShelf, type Shelf } from '../../../shared/household';

/** The text of the shelf shipped with the product. */
export const starterText: string = readFileSync(new URL('../../../assets/app/shelf/starter.brimful-shelf', import.meta.url), 'utf8');

function readStarter(): Shelf {
  const read = parseShelf(starterText);
  if (!read.ok) throw new Error(`the starter shelf cannot be read: ${JSON.stringify(read.problems)}`);
  return read.shelf;
}

/** The shelf shipped with the product. */
export const starterShelf: Shelf = readStarter();

/** A recipe of it. */
export function starter(id: string): Recipe {
  const found = starterShelf.recipes.find((r) => r.id === id);
  if (found === undefined) throw new Error(`the starter shelf has no "${id}"`);
  return found;
}
