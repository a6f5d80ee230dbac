import { join } from 'node:path';
import { settingsSchema } from '../../shared/host';
import { projectFolder, starterShelf } from '../place';
import { Demos } from './demos';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { makeFolder } from './folder';
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
  /** Makes a folder where there is none. @throws HostProblem */
  makeFolder(folder: string): Promise<void>;
  /** The file calls every save goes through. */
  readonly calls: FileCalls;
}

/** Opens the store and clears away what killed saves left behind. `calls`: the disk; a test hands in one that fails. */
export async function openStore(folders: StoreFolders, calls: FileCalls = diskCalls): Promise<Store> {
  const settings = new KeptFile(join(folders.data, 'settings.json'), settingsSchema, settingsSchema.parse({}), calls);
  const eventsFolder = async () => (await settings.read()).folder ?? folders.events;
  const places = [folders.data, join(folders.data, 'recovery'), await eventsFolder()];
  await Promise.all(places.map((folder) => sweepTemporaries(folder, calls)));
  return {
    settings,
    recents: new Recents(folders.data, calls),
    recovery: new Recovery(folders.data, calls),
    demos: new Demos(folders.demos),
    shelf: new HouseholdShelf(folders.data, starterShelf(projectFolder()), calls),
    eventsFolder,
    makeFolder: (folder) => makeFolder(folder, calls),
    calls,
  };
}
