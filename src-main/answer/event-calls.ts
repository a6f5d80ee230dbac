import { basename, dirname, join } from 'node:path';
import type { Problem } from '../../shared/host';
import { HostProblem } from '../problem';
import { fileNameOf, listEvents, modifiedOf, openEvent, saveEvent, titleOf } from '../store';
import type { Store } from '../store';
import type { Answers } from './answers';
import type { ChosenPlaces } from './chosen-places';
import { refuseNoEvent } from './no-event';
import { refuseOlderForm } from './older-form';
import type { Shell } from './shell';

type EventCalls = Pick<Answers, Extract<keyof Answers, `events.${string}`>>;

/** The calls about event files. */
export function eventCalls(store: Store, shell: Shell, places: ChosenPlaces): EventCalls {
  return {
    'events.recent': () => store.recents.list(),
    'events.forget': async ({ path }) => {
      await store.recents.forget(path);
      return { done: true };
    },
    'events.demos': () => store.demos.list(),
    'events.openDemo': async ({ id }) => ({ text: await store.demos.text(id) }),
    'events.folder': async () => {
      const folder = await store.eventsFolder();
      return { folder, files: await listEvents(folder) };
    },
    'events.chooseOpen': async () => ({ path: shell.dialogs ? await shell.dialogs.open(await store.eventsFolder()) : null }),
    'events.chooseSave': async ({ name, extension }) => {
      const folder = await store.eventsFolder();
      const suggested = join(folder, `${fileNameOf(withoutEnding(name, extension))}.${extension}`);
      // A native window asks about an existing file by itself.
      const path = shell.dialogs ? await shell.dialogs.save(suggested, extension) : suggested;
      places.note(path);
      if (shell.dialogs) return { path, taken: false };
      await store.makeFolder(folder);
      return { path: suggested, taken: (await modifiedOf(suggested)) !== null };
    },
    'events.open': async ({ path }) => {
      const { text, modified } = await openEvent(path);
      const { title, day } = titleOf(text, path);
      // The event opens even when the list of recent files cannot be written.
      await store.recents.note(path, title, day).catch(() => {});
      return { path, text, modified };
    },
    'events.save': async ({ path, text, expect }) => {
      const folder = await store.eventsFolder();
      if (dirname(path) === folder) await store.makeFolder(folder);
      refuseNoEvent(path, text);
      await refuseOlderForm(path, text);
      let warning: Problem | null = null;
      const modified = await saveEvent(path, text, expect, {
        calls: store.calls,
        wasGone: () => (warning = HostProblem.of('host.was-gone', { path }).problem),
        backupFailed: () => (warning = HostProblem.of('host.backup-failed', { path: `${path}.bak` }).problem),
      });
      const { title, day } = titleOf(text, path);
      // The save stands even when the list of recent files cannot be written.
      await store.recents.note(path, title, day).catch(() => {});
      return { path, modified, warning };
    },
  };
}

const withoutEnding = (name: string, ending: string): string => basename(name).replace(new RegExp(`\\.${ending}$`, 'i'), '');
