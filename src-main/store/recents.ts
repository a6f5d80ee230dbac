import { join } from 'node:path';
import * as z from 'zod';
import type { FileRef } from '../../shared/host';
import { modifiedOf } from './event-files';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { KeptFile } from './kept-file';

const recentSchema = z.array(z.object({ path: z.string().min(1), title: z.string(), day: z.string() }));
/** How many recent events are kept. */
export const mostRecents = 12;

/** The events opened or saved last, newest first. */
export class Recents {
  private readonly file: KeptFile<typeof recentSchema>;

  constructor(dataFolder: string, calls: FileCalls = diskCalls) {
    this.file = new KeptFile(join(dataFolder, 'recents.json'), recentSchema, [], calls);
  }

  async list(): Promise<FileRef[]> {
    return Promise.all((await this.file.read()).map(async (recent) => {
      const modified = await modifiedOf(recent.path);
      return { ...recent, modified: modified ?? 0, exists: modified !== null };
    }));
  }

  async note(path: string, title: string, day: string): Promise<void> {
    await this.file.change((list) => [{ path, title, day }, ...list.filter((recent) => recent.path !== path)].slice(0, mostRecents));
  }

  async forget(path: string): Promise<void> {
    await this.file.change((list) => list.filter((recent) => recent.path !== path));
  }
}
