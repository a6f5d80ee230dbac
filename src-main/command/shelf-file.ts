import { resolve } from 'node:path';
import { parseShelf, serialiseShelf } from '../../shared/household';
import type { Shelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import { dataFolder } from '../place';
import { plainFormats } from '../problem';
import { HouseholdShelf, saveShelfText } from '../store';
import { notRead, readFileText } from './read-recipe';
import type { Terminal } from './terminal';

const ownShelf = (): HouseholdShelf => new HouseholdShelf(dataFolder());

/** The household's own shelf, beside the settings. */
const householdShelf = (): string => ownShelf().path;

/** A shelf and the file it is kept in. */
export interface KeptShelf {
  readonly path: string;
  readonly shelf: Shelf;
}

async function readGiven(given: string): Promise<{ readonly path: string; readonly from: string; readonly text: string }> {
  const path = resolve(given);
  return { path, from: path, text: await readFileText(path) };
}

/** Reads a shelf file; the household's own without a name. Until there is one, it has the recipes that come with the program. @throws BadInput */
export async function readShelf(given: string | undefined, terminal: Terminal): Promise<KeptShelf> {
  const { path, from, text } = given === undefined ? { path: householdShelf(), ...(await ownShelf().read()) } : await readGiven(given);
  const read = parseShelf(text);
  if (!read.ok) throw notRead(from, read.problems);
  for (const note of read.notes) terminal.err(sayMessage(plainFormats, note));
  return { path, shelf: read.shelf };
}

/** Writes a shelf; the version before stays as `.bak`. */
export async function writeShelf({ path, shelf }: KeptShelf): Promise<void> {
  await saveShelfText(path, serialiseShelf(shelf), null);
}
