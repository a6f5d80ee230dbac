/** Names of the calls a face may make to its host. No zod here: this file is all that the preload imports. */
export const hostMethods = [
  'app.info', 'app.handed', 'app.ready', 'app.setUnsaved', 'app.close',
  'settings.get', 'settings.set',
  'events.recent', 'events.forget', 'events.demos', 'events.openDemo', 'events.folder',
  'events.chooseOpen', 'events.chooseSave', 'events.open', 'events.save',
  'recovery.keep', 'recovery.list', 'recovery.read', 'recovery.discard',
  'shelf.read', 'shelf.write',
  'print.pdf', 'print.paper', 'files.write', 'files.readCalendar',
] as const;
/** Name of a host call. */
export type HostMethod = (typeof hostMethods)[number];

/** What the desktop's native menu can ask of the face. `openPath` comes with the path of an event file. */
export const menuCommands = ['new', 'open', 'save', 'saveAs', 'print', 'undo', 'redo', 'openPath'] as const;
/** Name of a menu command. */
export type MenuCommand = (typeof menuCommands)[number];

/** What a face finds as `window.brimful` on the desktop; on the other hosts there is nothing, and calls go to `/rpc/<method>`. */
export interface DesktopBridge {
  /** Makes a call; answers `{ok: true, value}` or `{ok: false, problem}`. */
  readonly call: (method: string, input: unknown) => Promise<unknown>;
  /** Hears the native menu. Answers how to stop hearing it. */
  readonly onMenu: (listener: (command: MenuCommand, path: string | null) => void) => () => void;
}

/** Channel names between preload and desktop host. */
export const desktopChannels = { call: 'brimful:call', menu: 'brimful:menu' } as const;
