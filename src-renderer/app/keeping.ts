import { call } from '../bridge';
import { documentLeft, dropCopy, keepCopy, keepCopyNow } from './kept-copies';
import { sessionStore } from './session';
import { documentStore, type DocumentState } from './store';

const restMs = 1000;
const longestMs = 5000;

/**
 * Keeps unsaved work aside one second after the last change, five seconds after the first one at the latest, and when the window is hidden or left.
 * Tells the host whether there is any; where the browser owns the window, it asks before it is closed. @returns a stop.
 */
export function keepAside(): () => void {
  let timer = 0;
  let told = false;
  let kept: unknown = null;
  let confirmed: unknown = null;
  let waitingSince: number | null = null;
  let last: DocumentState | null = null;

  const rest = (): void => {
    window.clearTimeout(timer);
    waitingSince = null;
  };
  const forget = (): void => {
    kept = null;
    confirmed = null;
  };
  const unkept = (): DocumentState | null => {
    const open = documentStore.get();
    return open?.unsaved === true && open.event !== kept ? open : null;
  };
  const wait = (ms: number): void => {
    window.clearTimeout(timer);
    timer = window.setTimeout(() => void keep(), ms);
  };
  const keep = async (): Promise<void> => {
    const open = unkept();
    rest();
    if (open === null) return;
    kept = open.event;
    const answer = await keepCopy(open);
    if (answer.ok) confirmed = open.event;
    if (answer.ok || kept !== open.event) return;
    kept = null;
    if (unkept() !== null) wait(longestMs);
  };
  const left = (): void => {
    const open = documentStore.get();
    // A keep that is on its way may be called off with the page: what has not arrived is sent again.
    if (open?.unsaved === true && open.event !== confirmed) keepCopyNow(open);
  };
  const ask = (event: BeforeUnloadEvent): void => {
    left();
    event.preventDefault();
  };
  const hidden = (): void => {
    if (document.visibilityState === 'hidden') void keep();
  };
  const follow = (): void => {
    const open = documentStore.get();
    const unsaved = open?.unsaved === true;
    if (last !== null && last.openId !== open?.openId) {
      rest();
      forget();
      documentLeft(last.openId);
    }
    last = open;
    if (unsaved !== told) {
      told = unsaved;
      void call('app.setUnsaved', { unsaved });
      // Only while there is something to lose, and only where no host asks by itself.
      if (unsaved && sessionStore.get().info?.host === 'local') window.addEventListener('beforeunload', ask);
      else window.removeEventListener('beforeunload', ask);
    }
    if (open === null) return;
    if (!unsaved) {
      rest();
      forget();
      dropCopy(open.openId);
      return;
    }
    if (open.event === kept) return;
    const now = performance.now();
    waitingSince ??= now;
    wait(Math.max(0, Math.min(restMs, waitingSince + longestMs - now)));
  };
  const stop = documentStore.subscribe(follow);
  document.addEventListener('visibilitychange', hidden);
  window.addEventListener('pagehide', left);
  return () => {
    rest();
    stop();
    window.removeEventListener('beforeunload', ask);
    document.removeEventListener('visibilitychange', hidden);
    window.removeEventListener('pagehide', left);
  };
}
