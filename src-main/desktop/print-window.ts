import { BrowserWindow } from 'electron';
import { HostProblem, tell } from '../problem';
import { guardContents, guardedPreferences } from './guarded';
import type { PrintShelf } from './print-shelf';

/** How long a sheet may take to be drawn, and to become a PDF, in milliseconds. */
export const sheetMs = 20_000;

/** Shows a sheet in a window nobody sees, without scripts, and hands it to `use`. */
async function withSheet<T>(shelf: PrintShelf, html: string, use: (window: BrowserWindow) => Promise<T>): Promise<T> {
  const id = shelf.put(html);
  const window = new BrowserWindow({ show: false, webPreferences: { ...guardedPreferences, javascript: false } });
  guardContents(window.webContents);
  try {
    await inTime(window.loadURL(`app://print/${id}`));
    return await use(window);
  } catch (error) {
    if (error instanceof HostProblem) throw error;
    throw HostProblem.of('host.print-failed', { what: error instanceof Error ? error.message : String(error) });
  } finally {
    shelf.take(id);
    window.destroy();
  }
}

/** What a sheet becomes, or the problem that it took too long. */
async function inTime<T>(work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(HostProblem.of('host.print-failed', { what: tell('host.print-slow', { seconds: sheetMs / 1000 }) })), sheetMs);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** A sheet as PDF bytes: the document's own paper size, colours as drawn, tagged, with an outline. @throws HostProblem `print-failed` */
export const sheetToPdf = (shelf: PrintShelf, html: string): Promise<Uint8Array> =>
  withSheet(shelf, html, (window) =>
    inTime(window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true, generateDocumentOutline: true })));

/** What the print window says when it was closed without printing. */
const calledOff = /cancell?ed/i;

/** Opens the native print window for a sheet, for as long as the person likes. Closing it without printing is no failure. @throws HostProblem `paper-failed` */
export const sheetToPaper = (shelf: PrintShelf, html: string): Promise<boolean> =>
  withSheet(shelf, html, (window) => new Promise((resolve, reject) => {
    window.webContents.print({ silent: false, printBackground: true }, (success, reason) => {
      if (success || calledOff.test(reason)) resolve(true);
      else reject(HostProblem.of('host.paper-failed', { what: reason }));
    });
  }));
