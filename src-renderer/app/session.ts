import { useSyncExternalStore } from 'react';
import type { FileRef, Problem, Settings } from '../../shared/host';
import { call } from '../bridge';
import { working } from './working';
import type { CallOutput } from '../../shared/host';

/** What the host said about itself and this computer. */
export type HostInfo = CallOutput<'app.info'>;

/** What the shell knows beside the document: the host, the settings, what stands over the view. */
export interface Session {
  readonly info: HostInfo | null;
  readonly settings: Settings | null;
  readonly view: string;
  /** Panel over the view. `file`: the events list; `save`: name of a new file; `unsaved`: what to do with unsaved work before `goOn`; `changed`: somebody else wrote the file at `path`. */
  readonly panel: null | { readonly kind: 'file' } | { readonly kind: 'save' } | { readonly kind: 'settings' } | { readonly kind: 'changed'; readonly path: string } | { readonly kind: 'unsaved'; readonly goOn: () => void };
  /** A problem of the host or of a file, in words, until closed. */
  readonly problem: { readonly message: string; readonly mend?: string | undefined } | null;
  /** Why unsaved work could not be kept aside last time; null once it could. */
  readonly keepFault: Problem | null;
  readonly busy: boolean;
  readonly recents: readonly FileRef[];
}

let session: Session = { info: null, settings: null, view: 'board', panel: null, problem: null, keepFault: null, busy: false, recents: [] };
let arrived = new Date();
const listeners = new Set<() => void>();

/** This window's clock when the host last said its own. */
export const infoArrived = (): Date => arrived;

/** The shell's own state. */
export const sessionStore = {
  get: (): Session => session,
  subscribe: (listener: () => void): () => void => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
  set: (part: Partial<Session>): void => {
    if (part.info !== undefined && part.info !== session.info) arrived = new Date();
    session = { ...session, ...part };
    for (const listener of listeners) listener();
  },
  show: (view: string): void => {
    working.close();
    sessionStore.set({ view });
  },
};

/** The shell's state, kept up to date. */
export const useSession = (): Session => useSyncExternalStore(sessionStore.subscribe, sessionStore.get);

/** Writes a setting of this computer and follows it. */
export async function changeSettings(part: Partial<Settings>): Promise<void> {
  const answer = await call('settings.set', part);
  if (answer.ok) sessionStore.set({ settings: answer.value });
  else sessionStore.set({ problem: answer.problem });
}
