import { resolve } from 'node:path';
import { parseShelf, serialiseShelf } from '../../shared/household';
import type { Shelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import { dataFolder, projectFolder, starterShelf } from '../place';
import { plainFormats } from '../problem';
import { HouseholdShelf, saveShelfText } from '../store';
import { readFileText } from './read-file';
import { notRead } from './read-recipe';
import type { Terminal } from './terminal';

const ownShelf = (): HouseholdShelf => new HouseholdShelf(dataFolder());

/** The household's own shelf, beside the settings. */
const householdShelf = (): string => ownShelf().path;

/** A shelf and the file it is kept in. */
export interface KeptShelf {
  readonly path: string;
  /** When the file was last changed, in milliseconds; 'no-file' while the household has none of its own. */
  readonly seen: number | 'no-file';
  readonly shelf: Shelf;
}

interface Read {
  readonly path: string;
  readonly from: string;
  readonly text: string;
  readonly modified: number | null;
}

async function readGiven(given: string): Promise<Read> {
  const path = resolve(given);
  return { path, from: path, ...(await readFileText(path)) };
}

/** Reads a shelf file; the household's own without a name. Until there is one, it has the recipes that come with the program. @throws BadInput */
export async function readShelf(given: string | undefined, terminal: Terminal): Promise<KeptShelf> {
  const { path, from, text, modified }: Read = given === undefined ? { path: householdShelf(), ...(await ownShelf().read()) } : await readGiven(given);
  return { path, shelf: parsed(text, from, terminal), seen: modified ?? 'no-file' };
}

/** The recipes that come with the program. @throws BadInput */
export async function readStarter(terminal: Terminal): Promise<Shelf> {
  const path = starterShelf(projectFolder());
  return parsed((await readFileText(path)).text, path, terminal);
}

function parsed(text: string, from: string, terminal: Terminal): Shelf {
  const read = parseShelf(text);
  if (!read.ok) throw notRead(from, read.problems);
  for (const note of read.notes) terminal.err(sayMessage(plainFormats, note));
  return read.shelf;
}

/** Writes a shelf in the place of the one that was read; the version before stays as `.bak`. @throws HostProblem when somebody else wrote it in between */
export async function writeShelf({ path, shelf, seen }: KeptShelf): Promise<void> {
  await saveShelfText(path, serialiseShelf(shelf), seen);
}
