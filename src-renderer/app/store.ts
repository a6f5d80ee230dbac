import { formatsFor, type Event } from '../../shared/event';
import { plan as planOf, type Plan } from '../../shared/plan';
import type { Formats, Message } from '../../shared/words';
import { amend, closeGroup, record, redo, redoName, startHistory, undo, undoName, type EditResult, type History } from '../../shared/edit';
import { Effects } from './effects';

/** Where the document lies on disk, as last read or written. */
export interface FilePlace {
  readonly path: string | null;
  readonly modified: number | null;
}

/** The open document as the views see it. Replaced as a whole on every edit; unchanged parts keep their identity. */
export interface DocumentState {
  /** One for every time a document is opened: two files may hold the same event. Work kept aside goes under this name. */
  readonly openId: string;
  readonly event: Event;
  /** Plan of `event`; the last sound one while `notUpdated`. */
  readonly plan: Plan;
  readonly notUpdated: boolean;
  readonly formats: Formats;
  /** What the last edit changed, while the strip is open; `before` is the plan it is compared with. */
  readonly changes: Effects | null;
  readonly undoName: Message | null;
  readonly redoName: Message | null;
  readonly unsaved: boolean;
  /** Written by a newer program: it may be looked at and saved under another name, not edited. */
  readonly readOnly: boolean;
  readonly file: FilePlace;
}

type Listener = () => void;

let state: DocumentState | null = null;
let history: History | null = null;
let savedEvent: Event | null = null;
const listeners = new Set<Listener>();

function set(next: DocumentState | null): void {
  state = next;
  for (const listener of listeners) listener();
}

function planned(event: Event, last: Plan | null): { readonly plan: Plan; readonly notUpdated: boolean } {
  try {
    return { plan: planOf(event), notUpdated: false };
  } catch (fault) {
    if (last === null) throw fault;
    console.warn(fault);
    return { plan: last, notUpdated: true };
  }
}

function moveTo(event: Event, changes: { readonly cause: Message; readonly before: Plan; readonly merge: string | null } | null): void {
  if (state === null) return;
  const next = planned(event, state.plan);
  const sameFormats = event.preferences === state.event.preferences && event.day === state.event.day;
  const formats = sameFormats ? state.formats : formatsFor(event.preferences, event.day);
  set({
    ...state,
    ...next,
    event,
    formats,
    changes: changes === null ? null : new Effects(changes.cause, changes.before, changes.merge, next.notUpdated ? null : next.plan),
    undoName: history === null ? null : undoName(history),
    redoName: history === null ? null : redoName(history),
    unsaved: event !== savedEvent,
  });
}

/** The one place that holds the open document. */
export const documentStore = {
  get: (): DocumentState | null => state,
  subscribe: (listener: Listener): () => void => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },

  /** Shows an event as freshly opened. `unsaved`: it exists nowhere on disk yet. `openId`: of the kept copy it was taken from. @throws what planning it throws; the open document then stays as it is. */
  open: (event: Event, file: FilePlace, options: { readonly unsaved?: boolean; readonly readOnly?: boolean; readonly openId?: string } = {}): void => {
    // Whatever cannot be shown leaves the open document with its own history.
    const shown = planned(event, null);
    const formats = formatsFor(event.preferences, event.day);
    history = startHistory(event);
    savedEvent = options.unsaved === true ? null : event;
    set({
      openId: options.openId ?? `open-${crypto.randomUUID()}`, event, ...shown, formats, changes: null, undoName: null, redoName: null,
      unsaved: options.unsaved === true, readOnly: options.readOnly === true, file,
    });
  },

  close: (): void => {
    history = null;
    savedEvent = null;
    set(null);
  },

  /**
   * Takes the answer of a named edit. `merge`: edits with the same key become one undo step (one drag, one held slider).
   * @returns the problem to show beside the field, or null when the edit was taken.
   */
  edit: (result: EditResult, merge: string | null = null): Message | null => {
    if (state === null || history === null || state.readOnly) return null;
    if ('problem' in result) return result.problem;
    if (result.event === state.event) return null;
    const merged = merge !== null && history.openGroup === merge && state.changes?.merge === merge;
    const before = merged && state.changes !== null ? state.changes.before : state.plan;
    history = record(history, result.event, result.name, merge);
    moveTo(result.event, { cause: result.name, before, merge });
    return null;
  },

  /** The event that a step of this group starts from: before the group's first edit while the group is open, else the present one. @throws Error when nothing is open. */
  base: (merge: string): Event => {
    if (history === null) throw new Error('no event is open');
    const last = history.past.at(-1);
    return last !== undefined && history.openGroup === merge && last.group === merge ? last.before : history.present;
  },

  /** A drag has ended: the next one is a step of its own. */
  closeGroup: (): void => {
    if (history !== null) history = closeGroup(history);
  },

  undo: (): void => {
    if (state === null || history === null) return;
    const step = undoName(history);
    if (step === null) return;
    const before = state.plan;
    history = undo(history);
    moveTo(history.present, { cause: { id: 'edit.undone', params: { step } }, before, merge: null });
  },

  redo: (): void => {
    if (state === null || history === null) return;
    const step = redoName(history);
    if (step === null) return;
    const before = state.plan;
    history = redo(history);
    moveTo(history.present, { cause: { id: 'edit.redone', params: { step } }, before, merge: null });
  },

  /** Notes something that is no step of undo and is not taken back by it: what was printed. */
  note: (change: (event: Event) => Event): void => {
    if (state === null || history === null || state.readOnly) return;
    const shown = state.changes;
    history = amend(history, change);
    if (history.present === state.event) return;
    moveTo(history.present, null);
    if (shown !== null && state !== null) set({ ...state, changes: shown });
  },

  /** Closes the change strip. */
  readChanges: (): void => {
    if (state !== null && state.changes !== null) set({ ...state, changes: null });
  },

  /** The event `event` of the document `openId` is now on disk at `file`. When another document is open by now, that one is left alone. */
  saved: (openId: string, event: Event, file: FilePlace): void => {
    if (state === null || state.openId !== openId) return;
    savedEvent = event;
    set({ ...state, file, unsaved: state.event !== event, readOnly: false });
  },
};
