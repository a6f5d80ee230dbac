import { newEvent, openEventText, serialiseEvent } from './event-text';
import { call } from '../bridge';
import type { Problem } from '../../shared/host';
import { documentStore, type FilePlace } from './store';
import { sessionStore } from './session';

const fail = (problem: { readonly message: string; readonly mend?: string | undefined }): void => sessionStore.set({ problem: { message: problem.message, mend: problem.mend }, busy: false });

/** Runs `then` at once, or after the cook has said what is to become of unsaved work. */
export function leaving(then: () => void): void {
  if (documentStore.get()?.unsaved === true) sessionStore.set({ panel: { kind: 'unsaved', goOn: then } });
  else then();
}

function show(text: string, file: FilePlace, unsaved: boolean): void {
  const problem = openEventText(text, (event, readOnly) => documentStore.open(event, file, { unsaved, readOnly }));
  if (problem === null) sessionStore.set({ panel: null, problem: null, busy: false, view: 'board' });
  else fail(problem);
}

async function guarded<T>(answer: Promise<{ readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem }>, then: (value: T) => void): Promise<void> {
  sessionStore.set({ busy: true });
  const came = await answer;
  sessionStore.set({ busy: false });
  if (came.ok) then(came.value);
  else fail(came.problem);
}

/** Opens the file at a path. */
export const openPath = (path: string): Promise<void> =>
  guarded(call('events.open', { path }), ({ path: at, text, modified }) => show(text, { path: at, modified }, false));

/** Opens a demo event; it is not on disk until it is saved. */
export const openDemo = (id: string): Promise<void> =>
  guarded(call('events.openDemo', { id }), ({ text }) => show(text, { path: null, modified: null }, false));

/** Opens what somebody else wrote to the file; the own work is kept aside under a name of its own, so that both are there. */
export async function lookAtOther(path: string): Promise<void> {
  const open = documentStore.get();
  if (open !== null) {
    const kept = await call('recovery.keep', { id: `${open.event.id.slice(0, 60)}-own`, path: null, text: serialiseEvent(open.event) });
    if (!kept.ok) { fail(kept.problem); return; }
    await call('recovery.discard', { id: open.event.id });
  }
  await openPath(path);
}

/** Takes up work that was kept aside. */
export const openKept = (id: string): Promise<void> =>
  guarded(call('recovery.read', { id }), ({ text, path }) => show(text, { path, modified: null }, true));

/** A new, empty event. */
export function startNew(): void {
  documentStore.open(newEvent(sessionStore.get().info?.today ?? '2026-12-12', sessionStore.get().settings), { path: null, modified: null }, { unsaved: true });
  sessionStore.set({ panel: null, problem: null, view: 'guests' });
}

/** Open…: the host's own window where it has one, else our list. */
export async function chooseOpen(): Promise<void> {
  if (sessionStore.get().info?.dialogs !== true) {
    sessionStore.set({ panel: { kind: 'file' } });
    return;
  }
  const answer = await call('events.chooseOpen', {});
  if (!answer.ok) fail(answer.problem);
  else if (answer.value.path !== null) await openPath(answer.value.path);
}

/** Saves where the event lies; asks for a name when it lies nowhere yet. @returns true when it is on disk. */
export async function save(): Promise<boolean> {
  const open = documentStore.get();
  if (open === null) return false;
  if (open.file.path === null || open.readOnly) return saveAs();
  return write(open.file.path, open.file.modified);
}

/** Save as…: the host's window, or our panel with a name. */
export async function saveAs(): Promise<boolean> {
  const open = documentStore.get();
  if (open === null) return false;
  if (sessionStore.get().info?.dialogs !== true) {
    sessionStore.set({ panel: { kind: 'save' } });
    return false;
  }
  const answer = await call('events.chooseSave', { name: open.event.title });
  if (!answer.ok) { fail(answer.problem); return false; }
  return answer.value.path === null ? false : write(answer.value.path, null);
}

/** Writes the event to a path. `expect`: the time of the file as last seen, so that somebody else's change is not written over. */
export async function write(path: string, expect: number | null): Promise<boolean> {
  const open = documentStore.get();
  if (open === null) return false;
  const { event } = open;
  const answer = await call('events.save', { path, text: serialiseEvent(event), expect });
  if (!answer.ok && answer.problem.code === 'changed-outside') { sessionStore.set({ panel: { kind: 'changed', path }, busy: false }); return false; }
  if (!answer.ok) { fail(answer.problem); return false; }
  documentStore.saved(event, { path: answer.value.path, modified: answer.value.modified });
  sessionStore.set({ panel: null, problem: null });
  void call('recovery.discard', { id: event.id });
  return true;
}
