import { mkdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { parseShelf, serialiseShelf } from '../../shared/household';
import type { Shelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import { dataFolder, projectFolder } from '../place';
import { plainFormats } from '../problem';
import { modifiedOf, saveAtomically } from '../store';
import { notRead, readFileText } from './read-recipe';
import type { Terminal } from './terminal';

/** The household's own shelf, beside the settings. */
export const householdShelf = (): string => join(dataFolder(), 'household.brimful-shelf');
/** The shelf that comes with the program. */
const starterShelf = (): string => join(projectFolder(), 'assets', 'app', 'shelf', 'starter.brimful-shelf');

/** A shelf and the file it is kept in. */
export interface KeptShelf {
  readonly path: string;
  readonly shelf: Shelf;
}

/** Reads a shelf file; the household's own without a name. Until there is one, it has the recipes that come with the program. @throws BadInput */
export async function readShelf(given: string | undefined, terminal: Terminal): Promise<KeptShelf> {
  const path = given === undefined ? householdShelf() : resolve(given);
  const there = given !== undefined || (await modifiedOf(path)) !== null;
  const from = there ? path : starterShelf();
  const read = parseShelf(await readFileText(from));
  if (!read.ok) throw notRead(from, read.problems);
  for (const note of read.notes) terminal.err(sayMessage(plainFormats, note));
  return { path, shelf: read.shelf };
}

/** Writes a shelf; the version before stays as `.bak`. */
export async function writeShelf({ path, shelf }: KeptShelf): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await saveAtomically(path, serialiseShelf(shelf), { backup: true });
}
