import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import { readText } from './read-text';
import { titleOf } from './title-of';

const copySchema = z.object({ path: z.string().nullable(), at: z.number(), text: z.string() });
/** Unsaved work put aside. `at`: when, in milliseconds. */
export type RecoveryCopy = z.infer<typeof copySchema>;

/** Unsaved work, one file per open event, so that a crash loses seconds at most. */
export class Recovery {
  private readonly folder: string;

  constructor(dataFolder: string) {
    this.folder = join(dataFolder, 'recovery');
  }

  async keep(id: string, path: string | null, text: string, at: number): Promise<void> {
    await mkdir(this.folder, { recursive: true });
    await saveAtomically(this.fileOf(id), JSON.stringify({ path, at, text }));
  }

  async read(id: string): Promise<RecoveryCopy> {
    const copy = await this.tryRead(id);
    if (copy === null) throw HostProblem.of('host.no-recovery');
    return copy;
  }

  async discard(id: string): Promise<void> {
    await rm(this.fileOf(id), { force: true });
  }

  /** Newest first. */
  async list(): Promise<{ id: string; title: string; path: string | null; at: number }[]> {
    const names = await readdir(this.folder).catch(() => []);
    const found = [];
    for (const name of names) {
      const id = /^([A-Za-z0-9_-]+)\.json$/.exec(name)?.[1];
      const copy = id === undefined ? null : await this.tryRead(id);
      if (id !== undefined && copy !== null) found.push({ id, title: titleOf(copy.text, copy.path ?? '').title, path: copy.path, at: copy.at });
    }
    return found.sort((a, b) => b.at - a.at);
  }

  private async tryRead(id: string): Promise<RecoveryCopy | null> {
    try {
      const parsed = copySchema.safeParse(JSON.parse((await readText(this.fileOf(id))).text));
      return parsed.success ? parsed.data : null;
    } catch {
      return null;
    }
  }

  private fileOf(id: string): string {
    // The contract allows only letters, digits, - and _; checked again because the id becomes a file name.
    if (!/^[A-Za-z0-9_-]+$/.test(id)) throw HostProblem.of('host.no-recovery');
    return join(this.folder, `${id}.json`);
  }
}
