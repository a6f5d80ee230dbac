import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { projectFolder, starterShelf } from '../place';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import { modifiedOf } from './event-files';
import { InTurn } from './in-turn';
import { readText } from './read-text';

const turns = new InTurn();

/** A shelf as it lies on disk. `modified`: null while the household has none of its own and reads the one that comes with the program. */
export interface ShelfText {
  readonly text: string;
  /** File the text came from. */
  readonly from: string;
  readonly modified: number | null;
}

/**
 * Writes a shelf file whole or not at all; the version before stays as `.bak`.
 * @param expect the modification time last seen in milliseconds; null to write whatever is there
 * @throws HostProblem `changed-outside` when somebody else wrote it since
 */
export function saveShelfText(path: string, text: string, expect: number | null): Promise<number> {
  return turns.run(path, async () => {
    const there = await modifiedOf(path);
    if (expect !== null && there !== null && there !== expect) throw HostProblem.of('host.changed-outside', { path });
    await mkdir(dirname(path), { recursive: true });
    return saveAtomically(path, text, { backup: true });
  });
}

/** The household's own recipes, beside the settings. Until there are some, it reads as the shelf that comes with the program. */
export class HouseholdShelf {
  readonly path: string;
  private readonly starter: string;

  constructor(dataFolder: string, starter: string = starterShelf(projectFolder())) {
    this.path = join(dataFolder, 'household.brimful-shelf');
    this.starter = starter;
  }

  /** @throws HostProblem when the file cannot be read. */
  async read(): Promise<ShelfText> {
    const own = (await modifiedOf(this.path)) !== null;
    const from = own ? this.path : this.starter;
    const { text, modified } = await readText(from);
    return { text, from, modified: own ? modified : null };
  }

  write(text: string, expect: number | null): Promise<number> {
    return saveShelfText(this.path, text, expect);
  }
}
