import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { FileRef } from '../../shared/host';
import { readText } from './read-text';
import { titleOf } from './title-of';

/** Event files of a folder, newest first. A folder that is not there is empty. */
export async function listEvents(folder: string): Promise<FileRef[]> {
  const names = (await readdir(folder).catch(() => [])).filter((name) => name.toLowerCase().endsWith('.brimful') && !name.startsWith('.'));
  const files = await Promise.all(names.slice(0, 500).map(async (name) => {
    const path = join(folder, name);
    try {
      const { text, modified } = await readText(path);
      return [{ path, ...titleOf(text, path), modified, exists: true }];
    } catch {
      return [];
    }
  }));
  return files.flat().sort((a, b) => b.modified - a.modified);
}

/** A file name made from a title: no signs a disk refuses, never empty, never hidden. */
export function fileNameOf(title: string): string {
  // eslint-disable-next-line no-control-regex -- control signs are exactly what is to go
  const clean = title.normalize('NFC').replace(/[\\/:*?"<>|\u0000-\u001f]+/g, ' ').replace(/\s+/g, ' ').slice(0, 120).replace(/^[. ]+|[. ]+$/g, '');
  return clean === '' ? 'event' : clean;
}
