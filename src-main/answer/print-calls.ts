import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pagesOf } from '../print';
import { fileNameOf, writeExport } from '../store';
import type { Store } from '../store';
import type { Answers } from './answers';
import type { Shell } from './shell';

type PrintCalls = Pick<Answers, 'print.pdf' | 'print.paper' | 'files.write'>;

/** The calls that put sheets on paper or into files. */
export function printCalls(store: Store, shell: Shell): PrintCalls {
  const intoFolder = async (name: string, ending: string): Promise<string> => join(await store.eventsFolder(), `${fileNameOf(name.replace(/\.pdf$/i, ''))}.${ending}`);
  return {
    'print.pdf': async ({ html, name, path }) => {
      const target = path ?? (await intoFolder(name, 'pdf'));
      const bytes = await shell.pdf(html);
      if (path === null) await mkdir(dirname(target), { recursive: true });
      await writeExport(target, bytes);
      return { path: target, pages: pagesOf(bytes) };
    },
    'print.paper': async ({ html, name }) => ({ handled: await shell.paper(html, name) }),
    'files.write': async ({ path, text }) => {
      await writeExport(path, text);
      return { path };
    },
  };
}
