import type { Shell } from '../answer';
import type { Printer } from '../print';

/** The local host's part of every call: no native windows, printing by a browser in the background. */
export function localShell(parts: { version: string; openPath: string | null; printer: Printer; close: () => void }): Shell {
  return {
    kind: 'local',
    version: parts.version,
    openPath: parts.openPath,
    dialogs: null,
    ready: () => {},
    // The browser itself asks before a window with changes is closed.
    setUnsaved: () => {},
    close: parts.close,
    pdf: (html) => parts.printer.pdf(html),
    paper: () => Promise.resolve(false),
  };
}
