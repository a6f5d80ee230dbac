import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { HostProblem } from '../problem';
import { readText } from './read-text';
import { titleOf } from './title-of';

// The one that shows most comes first.
const first = ['lantern-evening', 'school-fair-stall'];
const placeOf = (id: string): number => (first.includes(id) ? first.indexOf(id) : first.length);

/** The demo events that come with the program. */
export class Demos {
  private readonly folder: string;

  constructor(folder: string) {
    this.folder = folder;
  }

  async list(): Promise<{ id: string; title: string }[]> {
    const ids = (await readdir(this.folder).catch(() => [])).flatMap((name) => /^([a-z0-9-]+)\.brimful$/.exec(name)?.[1] ?? []).sort((a, b) => placeOf(a) - placeOf(b) || (a < b ? -1 : 1));
    return Promise.all(ids.map(async (id) => ({ id, title: titleOf(await this.text(id), id).title })));
  }

  async text(id: string): Promise<string> {
    if (!/^[a-z0-9-]+$/.test(id)) throw HostProblem.of('host.no-demo', { id });
    try {
      return (await readText(join(this.folder, `${id}.brimful`))).text;
    } catch {
      throw HostProblem.of('host.no-demo', { id });
    }
  }
}
