import { dirname, join } from 'node:path';
import { projectFolder, starterShelf } from '../place';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import { modifiedOf } from './event-files';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { makeFolder } from './folder';
import { InTurn } from './in-turn';
import { largestFileBytes, readText } from './read-text';
import { isChanged } from './seen';
import type { Seen } from './seen';

const turns = new InTurn();

/** A shelf as it lies on disk. `modified`: null while the household has none of its own and reads the one that comes with the program. */
export interface ShelfText {
  readonly text: string;
  /** File the text came from. */
  readonly from: string;
  readonly modified: number | null;
}

/**
 * Writes a shelf file whole or not at all; the version before stays as `.bak`. It is always the version last seen that is replaced.
 * @throws HostProblem `shelf-changed` when somebody else wrote or removed it since, `shelf-too-large` when it could not be read again
 */
export function saveShelfText(path: string, text: string, seen: Exclude<Seen, 'whatever'>, calls: FileCalls = diskCalls): Promise<number> {
  // What could not be read again is not saved.
  if (Buffer.byteLength(text) > largestFileBytes) throw HostProblem.of('host.shelf-too-large', { path, megabytes: largestFileBytes / 1_000_000 });
  return turns.run(path, async () => {
    if (isChanged(seen, await modifiedOf(path))) throw HostProblem.of('host.shelf-changed');
    await makeFolder(dirname(path), calls);
    return saveAtomically(path, text, { backup: true, calls });
  });
}

/** The household's own recipes, beside the settings. Until there are some, it reads as the shelf that comes with the program. */
export class HouseholdShelf {
  readonly path: string;
  private readonly starter: string;
  private readonly calls: FileCalls;

  constructor(dataFolder: string, starter: string = starterShelf(projectFolder()), calls: FileCalls = diskCalls) {
    this.path = join(dataFolder, 'household.brimful-shelf');
    this.starter = starter;
    this.calls = calls;
  }

  /** @throws HostProblem when the file cannot be read. */
  async read(): Promise<ShelfText> {
    const own = (await modifiedOf(this.path)) !== null;
    const from = own ? this.path : this.starter;
    const { text, modified } = await readText(from);
    return { text, from, modified: own ? modified : null };
  }

  /** @param seen as `modified` of what was read; 'no-file' where that was null: two windows that both saw no shelf do not write over each other. */
  async write(text: string, seen: Exclude<Seen, 'whatever'>): Promise<number> {
    return saveShelfText(this.path, text, seen, this.calls);
  }
}
