import type { Store } from '../store';
import type { Answers } from './answers';
import { ChosenPlaces } from './chosen-places';
import { eventCalls } from './event-calls';
import { printCalls } from './print-calls';
import type { Shell } from './shell';
import { shelfCalls } from './shelf-calls';
import { today } from './today';

/** Every call of the contract, answered from one store and one shell. `clock` is handed in so that tests choose the day. */
export function allCalls(store: Store, shell: Shell, clock: () => Date = () => new Date()): Answers {
  const places = new ChosenPlaces();
  return {
    'app.info': async () => ({
      host: shell.kind,
      version: shell.version,
      dialogs: shell.dialogs !== null,
      ...today(clock()),
      openPath: shell.openPath,
      folder: await store.eventsFolder(),
    }),
    'app.handed': async (_input, gone) => ({ path: (await shell.handed?.(gone)) ?? null }),
    'app.ready': () => {
      shell.ready();
      return { done: true };
    },
    'app.setUnsaved': ({ unsaved }) => {
      shell.setUnsaved(unsaved);
      return { done: true };
    },
    'app.close': () => {
      shell.close();
      return { done: true };
    },
    'settings.get': () => store.settings.read(),
    'settings.set': (change) => store.settings.change((settings) => ({ ...settings, ...given(change) })),
    ...eventCalls(store, shell, places),
    'recovery.keep': async ({ id, path, modified, text }) => {
      await store.recovery.keep(id, { path, modified, text, at: clock().getTime() });
      return { done: true };
    },
    'recovery.list': () => store.recovery.list(),
    'recovery.read': async ({ id }) => {
      const { text, path, modified } = await store.recovery.read(id);
      return { text, path, modified };
    },
    'recovery.discard': async ({ id }) => {
      await store.recovery.discard(id);
      return { done: true };
    },
    ...printCalls(store, shell, places),
    ...shelfCalls(store),
  };
}

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** The fields that were given: an undefined one leaves the setting as it is. */
const given = <T extends object>(change: T): Given<T> =>
  Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined)) as Given<T>;
