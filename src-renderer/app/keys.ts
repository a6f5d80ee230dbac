import { useEffect } from 'react';
import { views } from '../views/registry';
import { runCommand, typing } from './commands';
import { sessionStore } from './session';

function act(e: KeyboardEvent): boolean {
  const key = e.key.toLowerCase();
  if (e.altKey && !e.ctrlKey && !e.metaKey) {
    if (key === 'n') { runCommand('new'); return true; }
    // 0 stands behind 9 on the keyboard: the tenth.
    const view = views[(Number(e.code.replace(/^Digit/, '')) + 9) % 10];
    if (/^Digit\d$/.test(e.code) && view !== undefined) { sessionStore.show(view.id); return true; }
    return false;
  }
  if (!(e.ctrlKey || e.metaKey)) return false;
  // In a text they are the text's own; under a panel the event stays as it is.
  if ((key === 'z' || key === 'y') && (typing(e.target) || sessionStore.get().panel !== null)) return false;
  if (key === 'z' && e.shiftKey) { runCommand('redo'); return true; }
  if (key === 'z') { runCommand('undo'); return true; }
  if (key === 'y') { runCommand('redo'); return true; }
  if (key === 's') { runCommand(e.shiftKey ? 'saveAs' : 'save'); return true; }
  if (key === 'o') { runCommand('open'); return true; }
  // On the view Sheets the browser's own print window prints what is there.
  if (key === 'p' && sessionStore.get().view !== 'sheets') { runCommand('print'); return true; }
  return false;
}

/** The keys that work everywhere. */
export function useKeys(): void {
  useEffect(() => {
    const listen = (e: KeyboardEvent): void => {
      if (act(e)) e.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
