import { join } from 'node:path';
import { BrowserWindow, dialog } from 'electron';
import type { WebContents } from 'electron';
import { tell } from '../problem';
import { guardContents, guardedPreferences } from './guarded';
import { ownPrefix } from './sender';

/** The one window with the face. */
export class MainWindow {
  readonly window: BrowserWindow;
  private unsaved = false;
  private listens = false;
  private waiting: string[] = [];
  private readonly send: (path: string) => void;

  /** `send`: tells the page to open a file. */
  constructor(preload: string, send: (contents: WebContents, path: string) => void) {
    this.window = new BrowserWindow({
      width: 1280,
      height: 860,
      minWidth: 720,
      minHeight: 520,
      show: false,
      webPreferences: { ...guardedPreferences, preload },
    });
    const contents = this.window.webContents;
    this.send = (path) => send(contents, path);
    guardContents(contents);
    contents.on('render-process-gone', (_event, { reason }) => {
      if (reason !== 'clean-exit') void this.drawAnew();
    });
    this.window.on('close', (event) => {
      if (this.unsaved && !this.mayLeave()) event.preventDefault();
    });
    this.window.once('ready-to-show', () => this.window.show());
  }

  load(): Promise<void> {
    return this.window.loadURL(`${ownPrefix}index.html`);
  }

  /** Opens a file in the page: at once where it listens, else as soon as it does. */
  openFile(path: string): void {
    if (this.listens) this.send(path);
    else this.waiting.push(path);
  }

  /** The page is drawn and listens. */
  ready(): void {
    this.listens = true;
    const paths = this.waiting;
    this.waiting = [];
    for (const path of paths) this.send(path);
  }

  setUnsaved(unsaved: boolean): void {
    this.unsaved = unsaved;
    this.window.setDocumentEdited(unsaved);
  }

  /** Brings the window to the front. */
  raise(): void {
    if (this.window.isMinimized()) this.window.restore();
    this.window.focus();
  }

  /** The page has ended by itself: says so, and shows it anew. What was not saved is kept aside and offered there. The box is waited for, so that a page that always ends does not flicker. */
  private async drawAnew(): Promise<void> {
    this.listens = false;
    this.setUnsaved(false);
    await dialog.showMessageBox(this.window, { type: 'error', message: tell('host.window-gone.title'), detail: tell('host.window-gone.detail'), buttons: [tell('host.window-gone.again')] });
    if (!this.window.isDestroyed()) await this.load();
  }

  private mayLeave(): boolean {
    const leave = 1;
    return dialog.showMessageBoxSync(this.window, {
      type: 'question',
      message: tell('host.unsaved.title'),
      detail: tell('host.unsaved.detail'),
      buttons: [tell('host.unsaved.stay'), tell('host.unsaved.leave')],
      defaultId: 0,
      cancelId: 0,
    }) === leave;
  }
}

/** Where the preload script lies, seen from the built main program. */
export const preloadPath = (project: string): string => join(project, 'out', 'preload', 'preload.cjs');
