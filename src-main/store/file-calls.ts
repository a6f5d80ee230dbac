import { constants, access, chmod, copyFile, link, mkdir, open, readdir, readlink, realpath, rename, rm, stat } from 'node:fs/promises';

/** A file being written. */
export interface WritableFile {
  write(bytes: Uint8Array): Promise<number>;
  /** Sets the rights: those given to `create` are narrowed by what the person's account takes away from new files. */
  setMode(mode: number): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** The file calls a save makes, each one replaceable, so that a test can let any of them fail. */
export interface FileCalls {
  realpath(path: string): Promise<string>;
  /** Where a link points, as written in it. */
  readlink(path: string): Promise<string>;
  mode(path: string): Promise<number>;
  modified(path: string): Promise<number>;
  mayWrite(path: string): Promise<void>;
  create(path: string, mode: number): Promise<WritableFile>;
  link(from: string, to: string): Promise<void>;
  copy(from: string, to: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  remove(path: string): Promise<void>;
  list(folder: string): Promise<string[]>;
  /** Makes a folder and those above it. With `mode`, a folder that is there already gets these rights too. */
  makeFolder(folder: string, mode?: number): Promise<void>;
  syncFile(path: string): Promise<void>;
  syncFolder(folder: string): Promise<void>;
}

/** The calls as Node makes them. */
export const diskCalls: FileCalls = {
  realpath: (path) => realpath(path),
  readlink: (path) => readlink(path),
  mode: async (path) => (await stat(path)).mode & 0o777,
  modified: async (path) => (await stat(path)).mtimeMs,
  mayWrite: (path) => access(path, constants.W_OK),
  create: async (path, mode) => {
    const file = await open(path, 'wx', mode);
    return {
      write: async (bytes) => (await file.write(bytes)).bytesWritten,
      setMode: (rights) => file.chmod(rights),
      sync: () => file.sync(),
      close: () => file.close(),
    };
  },
  link: (from, to) => link(from, to),
  copy: (from, to) => copyFile(from, to),
  rename: (from, to) => rename(from, to),
  remove: (path) => rm(path, { force: true }),
  list: (folder) => readdir(folder),
  makeFolder: async (folder, mode) => {
    await mkdir(folder, { recursive: true, ...(mode === undefined ? {} : { mode }) });
    if (mode !== undefined) await chmod(folder, mode);
  },
  syncFile: async (path) => {
    const handle = await open(path, 'r+');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  },
  syncFolder: async (folder) => {
    // Windows cannot open a folder for flushing; the rename itself is journalled there.
    if (process.platform === 'win32') return;
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  },
};
