import { join } from 'node:path';
import { settingsSchema } from '../../shared/host';
import { Demos } from './demos';
import { diskCalls } from './file-calls';
import { HouseholdShelf } from './household-shelf';
import { KeptFile } from './kept-file';
import { Recents } from './recents';
import { Recovery } from './recovery';
import { sweepTemporaries } from './temporary-names';

/** Where a store keeps its things. */
export interface StoreFolders {
  readonly data: string;
  readonly events: string;
  readonly demos: string;
}

/** Everything kept on disk, shared by all hosts. */
export interface Store {
  readonly settings: KeptFile<typeof settingsSchema>;
  readonly recents: Recents;
  readonly recovery: Recovery;
  readonly demos: Demos;
  /** Recipes of the household, kept across events. */
  readonly shelf: HouseholdShelf;
  /** The folder event files go to unless the cook chose another. */
  eventsFolder(): Promise<string>;
}

/** Opens the store and clears away what killed saves left behind. */
export async function openStore(folders: StoreFolders): Promise<Store> {
  const settings = new KeptFile(join(folders.data, 'settings.json'), settingsSchema, settingsSchema.parse({}));
  const eventsFolder = async () => (await settings.read()).folder ?? folders.events;
  const places = [folders.data, join(folders.data, 'recovery'), await eventsFolder()];
  await Promise.all(places.map((folder) => sweepTemporaries(folder, diskCalls)));
  return { settings, recents: new Recents(folders.data), recovery: new Recovery(folders.data), demos: new Demos(folders.demos), shelf: new HouseholdShelf(folders.data), eventsFolder };
}
