import type { Shell } from '../answer';
import type { Printer } from '../print';
import type { HandedFiles } from './handed-files';

/** The local host's part of every call: no native windows, printing by a browser in the background. */
export function localShell(parts: { version: string; handed: HandedFiles; printer: Printer; close: () => void }): Shell {
  return {
    kind: 'local',
    version: parts.version,
    get openPath() {
      return parts.handed.first;
    },
    handed: (gone) => parts.handed.next(gone),
    dialogs: null,
    ready: () => {},
    // The page lets the browser ask (`beforeunload`) before a window with changes is closed.
    setUnsaved: () => {},
    close: parts.close,
    pdf: (html) => parts.printer.pdf(html),
    paper: () => Promise.resolve(false),
  };
}
