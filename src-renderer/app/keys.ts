import { useEffect } from 'react';
import { views } from '../views/registry';
import { chooseOpen, leaving, save, saveAs, startNew } from './files';
import { sessionStore } from './session';
import { documentStore } from './store';

/** A text being typed keeps its own undo. */
const typing = (target: EventTarget | null): boolean => target instanceof HTMLInputElement && target.dataset['draft'] === 'yes';

function act(e: KeyboardEvent): boolean {
  const key = e.key.toLowerCase();
  if (e.altKey && !e.ctrlKey && !e.metaKey) {
    if (key === 'n') { leaving(startNew); return true; }
    const view = views[Number(e.code.replace(/^Digit/, '')) - 1];
    if (/^Digit[1-9]$/.test(e.code) && view !== undefined) { sessionStore.show(view.id); return true; }
    return false;
  }
  if (!(e.ctrlKey || e.metaKey)) return false;
  if (key === 'z' && typing(e.target)) return false;
  if (key === 'z' && e.shiftKey) { documentStore.redo(); return true; }
  if (key === 'z') { documentStore.undo(); return true; }
  if (key === 'y') { documentStore.redo(); return true; }
  if (key === 's') { void (e.shiftKey ? saveAs() : save()); return true; }
  if (key === 'o') { leaving(() => void chooseOpen()); return true; }
  return false;
}

/** The keys that work everywhere. */
export function useKeys(): void {
  useEffect(() => {
    const listen = (e: KeyboardEvent): void => {
      // A field being left commits its entry before it is saved.
      if ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === 's' && document.activeElement instanceof HTMLInputElement) {
        const field = document.activeElement;
        field.blur();
        field.focus();
      }
      if (act(e)) e.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
