import type { MenuCommand } from '../../shared/host/methods';
import { chooseOpen, leaving, openPath, save, saveAs, startNew } from './files';
import { sessionStore } from './session';
import { documentStore } from './store';

/** Inputs that hold no text: the keys of undo mean the event there. */
const textless = new Set(['button', 'checkbox', 'color', 'file', 'radio', 'range', 'reset', 'submit']);

/** A text being typed keeps its own undo. A field that stands as the event has it (`data-draft="no"`) is no text being typed. */
export function typing(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLInputElement) return !textless.has(target.type) && target.dataset['draft'] !== 'no';
  return target instanceof HTMLElement && target.isContentEditable;
}

/** A field being left commits its entry before it is saved. */
function commitEntry(): void {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
  field.blur();
  field.focus();
}

/** What keys and the native menu ask for; both run the same. `path`: the file of `openPath`. */
export function runCommand(command: MenuCommand, path: string | null = null): void {
  switch (command) {
    case 'new': return leaving(startNew);
    case 'open': return leaving(() => void chooseOpen());
    case 'openPath': return path === null ? undefined : leaving(() => void openPath(path));
    case 'save': commitEntry(); void save(); return;
    case 'saveAs': commitEntry(); void saveAs(); return;
    case 'print': if (documentStore.get() !== null) sessionStore.show('sheets'); return;
    case 'undo': documentStore.undo(); return;
    case 'redo': documentStore.redo(); return;
  }
}
