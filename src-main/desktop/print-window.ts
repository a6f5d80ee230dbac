import { BrowserWindow } from 'electron';
import { guardContents, guardedPreferences } from './guarded';
import type { PrintShelf } from './print-shelf';

/** Shows a sheet in a window nobody sees, without scripts, and hands it to `use`. */
async function withSheet<T>(shelf: PrintShelf, html: string, use: (window: BrowserWindow) => Promise<T>): Promise<T> {
  const id = shelf.put(html);
  const window = new BrowserWindow({ show: false, webPreferences: { ...guardedPreferences, javascript: false } });
  guardContents(window.webContents);
  try {
    await window.loadURL(`app://print/${id}`);
    return await use(window);
  } finally {
    shelf.take(id);
    window.destroy();
  }
}

/** A sheet as PDF bytes: the document's own paper size, colours as drawn, tagged, with an outline. */
export const sheetToPdf = (shelf: PrintShelf, html: string): Promise<Uint8Array> =>
  withSheet(shelf, html, (window) =>
    window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true, generateDocumentOutline: true }));

/** Opens the native print window for a sheet. Closing it without printing is no failure. */
export const sheetToPaper = (shelf: PrintShelf, html: string): Promise<boolean> =>
  withSheet(shelf, html, (window) => new Promise((resolve) => {
    window.webContents.print({ silent: false, printBackground: true }, () => resolve(true));
  }));
