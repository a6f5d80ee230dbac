import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { makeFolder, privateFolder } from './folder';
import { InTurn } from './in-turn';
import { largestFileBytes, readText } from './read-text';
import { titleOf } from './title-of';

const copySchema = z.object({ path: z.string().nullable(), modified: z.number().nullable().default(null), at: z.number(), text: z.string() });
/** Unsaved work put aside. `at`: when, `modified`: the time of the file as last seen, both in milliseconds. */
export type RecoveryCopy = z.infer<typeof copySchema>;

// The text of an event inside JSON again: a quotation mark takes two bytes, rarer signs six.
const largestCopyBytes = 6 * largestFileBytes + 64 * 1024;

/** Unsaved work, one file per open document, so that a crash loses seconds at most. It holds names, addresses and allergies: nobody else may read it. */
export class Recovery {
  private readonly folder: string;
  private readonly turns = new InTurn();
  private readonly calls: FileCalls;

  constructor(dataFolder: string, calls: FileCalls = diskCalls) {
    this.calls = calls;
    this.folder = join(dataFolder, 'recovery');
  }

  async keep(id: string, copy: RecoveryCopy): Promise<void> {
    const file = this.fileOf(id);
    await this.turns.run(id, async () => {
      await makeFolder(this.folder, this.calls, privateFolder);
      await saveAtomically(file, JSON.stringify(copy), { isPrivate: true, calls: this.calls });
    });
  }

  async read(id: string): Promise<RecoveryCopy> {
    const copy = await this.tryRead(id);
    if (copy === null) throw HostProblem.of('host.no-recovery');
    return copy;
  }

  async discard(id: string): Promise<void> {
    const file = this.fileOf(id);
    await this.turns.run(id, () => rm(file, { force: true }));
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
      const parsed = copySchema.safeParse(JSON.parse((await readText(this.fileOf(id), largestCopyBytes)).text));
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
