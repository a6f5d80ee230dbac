/** Names of the calls a face may make to its host. No zod here: this file is all that the preload imports. */
export const hostMethods = [
  'app.info', 'app.ready', 'app.setUnsaved', 'app.close',
  'settings.get', 'settings.set',
  'events.recent', 'events.forget', 'events.demos', 'events.openDemo', 'events.folder',
  'events.chooseOpen', 'events.chooseSave', 'events.open', 'events.save',
  'recovery.keep', 'recovery.list', 'recovery.read', 'recovery.discard',
  'print.pdf', 'print.paper', 'files.write',
] as const;
/** Name of a host call. */
export type HostMethod = (typeof hostMethods)[number];
