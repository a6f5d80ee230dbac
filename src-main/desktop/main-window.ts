import { join } from 'node:path';
import { BrowserWindow, dialog } from 'electron';
import { tell } from '../problem';
import { guardContents, guardedPreferences } from './guarded';
import { ownPrefix } from './sender';

/** The one window with the face. */
export class MainWindow {
  readonly window: BrowserWindow;
  private unsaved = false;

  constructor(preload: string) {
    this.window = new BrowserWindow({
      width: 1280,
      height: 860,
      minWidth: 720,
      minHeight: 520,
      show: false,
      webPreferences: { ...guardedPreferences, preload },
    });
    guardContents(this.window.webContents);
    this.window.on('close', (event) => {
      if (this.unsaved && !this.mayLeave()) event.preventDefault();
    });
    this.window.once('ready-to-show', () => this.window.show());
  }

  load(): Promise<void> {
    return this.window.loadURL(`${ownPrefix}index.html`);
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
