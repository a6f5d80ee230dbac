import type { Session, WebContents, WebPreferences } from 'electron';

/** True while the program itself is being worked on: only then its insides may be looked at. */
export const inDevelopment = (env: Readonly<Record<string, string | undefined>> = process.env): boolean => env['BRIMFUL_DEVELOPMENT'] === '1';

/** Preferences of every window, stated although most are the default. */
export const guardedPreferences = {
  sandbox: true,
  contextIsolation: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webSecurity: true,
  webviewTag: false,
  spellcheck: false,
  navigateOnDragDrop: false,
  devTools: inDevelopment(),
} as const satisfies WebPreferences;

const guarded = new WeakSet<WebContents>();

/** A page may not go elsewhere, open windows or hold other pages inside. Asked for again, a page that is guarded stays as it is. */
export function guardContents(contents: WebContents): void {
  if (guarded.has(contents)) return;
  guarded.add(contents);
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  // The shell asks about unsaved changes by itself; a page cannot hold its window.
  contents.on('will-prevent-unload', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** No permission is ever given, and nothing outside our own scheme is ever fetched. */
export function guardSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((details, decide) => decide({ cancel: !isOwnAddress(details.url) }));
}

/** Addresses that never leave this computer and are ours. */
export const isOwnAddress = (url: string, development: boolean = inDevelopment()): boolean => /^(app|data|blob):/.test(url) || (development && url.startsWith('devtools:'));
