import { createContext, useContext, useSyncExternalStore } from 'react';
import { documentStore, type DocumentState } from './store';

/**
 * What every view reads and writes. `event` is the newest sound value; `plan` follows it synchronously.
 * `edit` takes the answer of a named edit of `shared/edit`: on `ok` it becomes one undo step, otherwise the problem is handed back to show beside the field.
 */
export interface DocumentView extends DocumentState {
  readonly edit: typeof documentStore.edit;
  readonly undo: typeof documentStore.undo;
  readonly redo: typeof documentStore.redo;
  readonly readChanges: typeof documentStore.readChanges;
}

/** The open document. Only for components below the shell, which shows the start page while nothing is open. @throws Error when nothing is open. */
export function useDocument(): DocumentView {
  const state = useSyncExternalStore(documentStore.subscribe, documentStore.get);
  if (state === null) throw new Error('no event is open');
  return { ...state, edit: documentStore.edit, undo: documentStore.undo, redo: documentStore.redo, readChanges: documentStore.readChanges };
}

/** What the lanes draw: the document, at most a few frames behind while the pointer drags. */
export const LaneDocument = createContext<DocumentState | null>(null);

/** The document as the lanes draw it. Only under the board. @throws Error elsewhere. */
export function useLaneDocument(): DocumentState {
  const state = useContext(LaneDocument);
  if (state === null) throw new Error('a lane belongs on the board');
  return state;
}

/** The open document, or null on the start page. */
export const useOpenDocument = (): DocumentState | null => useSyncExternalStore(documentStore.subscribe, documentStore.get);
