import { call } from '../bridge';
import { serialiseEvent } from './event-text';
import { documentStore } from './store';

const restMs = 1000;

/** Keeps unsaved work aside one second after the last change, and tells the host whether there is any. @returns a stop. */
export function keepAside(): () => void {
  let timer = 0;
  let told = false;
  let kept: unknown = null;
  const stop = documentStore.subscribe(() => {
    const open = documentStore.get();
    const unsaved = open?.unsaved === true;
    if (unsaved !== told) {
      told = unsaved;
      void call('app.setUnsaved', { unsaved });
    }
    if (!unsaved || open.event === kept) return;
    window.clearTimeout(timer);
    timer = window.setTimeout(() => {
      const now = documentStore.get();
      if (now === null || !now.unsaved) return;
      kept = now.event;
      void call('recovery.keep', { id: now.event.id, path: now.file.path, text: serialiseEvent(now.event) });
    }, restMs);
  });
  return () => {
    window.clearTimeout(timer);
    stop();
  };
}
