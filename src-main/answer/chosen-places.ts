import { realpath } from 'node:fs/promises';
import { dirname, join, relative, resolve, isAbsolute, sep } from 'node:path';
import { HostProblem } from '../problem';

/** Where the face may write sheets and tables: where the cook said so in this run, and inside the events folder. */
export class ChosenPlaces {
  private readonly chosen = new Set<string>();

  /** Notes a path that a save window gave out. */
  note(path: string | null): void {
    if (path !== null) this.chosen.add(resolve(path));
  }

  /** @throws HostProblem `not-chosen` */
  async check(path: string, eventsFolder: string): Promise<void> {
    if (!this.chosen.has(resolve(path)) && !(await inside(path, eventsFolder))) throw HostProblem.of('host.not-chosen', { path });
  }
}

/** True for a path inside a folder, also after following links. */
async function inside(path: string, folder: string): Promise<boolean> {
  const place = dirname(resolve(path));
  const [real, root] = await Promise.all([realOf(place), realOf(resolve(folder))]);
  const way = relative(root, real);
  return !isAbsolute(way) && way !== '..' && !way.startsWith(`..${sep}`);
}

/** The path without links; what is not there yet is taken as written below what is. */
async function realOf(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch {
    const up = dirname(path);
    return up === path ? path : join(await realOf(up), relative(up, path));
  }
}
