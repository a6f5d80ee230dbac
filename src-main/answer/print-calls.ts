import { dirname, join } from 'node:path';
import { pagesOf } from '../print';
import { fileNameOf, modifiedOf, readCalendarFile, writeExport } from '../store';
import type { Store } from '../store';
import type { Answers } from './answers';
import type { ChosenPlaces } from './chosen-places';
import type { Shell } from './shell';

type PrintCalls = Pick<Answers, 'print.pdf' | 'print.paper' | 'files.write' | 'files.readCalendar'>;

/** The calls that put sheets on paper or into files. */
export function printCalls(store: Store, shell: Shell, places: ChosenPlaces): PrintCalls {
  const freePath = async (name: string): Promise<string> => {
    const start = join(await store.eventsFolder(), fileNameOf(name.replace(/\.pdf$/i, '')));
    for (let number = 1; ; number += 1) {
      const path = number === 1 ? `${start}.pdf` : `${start} (${number}).pdf`;
      if ((await modifiedOf(path)) === null) return path;
    }
  };
  return {
    'print.pdf': async ({ html, name, path }) => {
      if (path !== null) await places.check(path, await store.eventsFolder());
      const bytes = await shell.pdf(html);
      // Nobody chose this name, so nothing that has it is written over.
      const target = path ?? (await freePath(name));
      if (path === null) await store.makeFolder(dirname(target));
      await writeExport(target, bytes, store.calls);
      return { path: target, pages: pagesOf(bytes) };
    },
    'print.paper': async ({ html, name }) => ({ handled: await shell.paper(html, name) }),
    'files.write': async ({ path, text }) => {
      await places.check(path, await store.eventsFolder());
      await writeExport(path, text, store.calls);
      return { path };
    },
    'files.readCalendar': async ({ path }) => {
      await places.check(path, await store.eventsFolder());
      return { text: await readCalendarFile(path) };
    },
  };
}
