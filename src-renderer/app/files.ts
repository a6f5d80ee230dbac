import { call } from '../bridge';
import { newEvent, openEventText, serialiseEvent } from './event-text';
import { inTurn } from './in-turn';
import { copyTaken, holdOn, keepCopy } from './kept-copies';
import type { Problem } from '../../shared/host';
import { documentStore, type DocumentState, type FilePlace } from './store';
import { sessionStore } from './session';
import { sayAtStart } from './speak';

const fail = (problem: { readonly message: string; readonly mend?: string | undefined }): void => sessionStore.set({ problem: { message: problem.message, mend: problem.mend }, busy: false });

/** Runs `then` at once, or after the cook has said what is to become of unsaved work. */
export function leaving(then: () => void): void {
  if (documentStore.get()?.unsaved === true) sessionStore.set({ panel: { kind: 'unsaved', goOn: then } });
  else then();
}

function show(text: string, file: FilePlace, unsaved: boolean, openId?: string): void {
  try {
    const problem = openEventText(text, (event, readOnly) => documentStore.open(event, file, { unsaved, readOnly, ...(openId === undefined ? {} : { openId }) }));
    if (problem === null) sessionStore.set({ panel: null, problem: null, busy: false, view: 'board' });
    else fail(problem);
  } catch (fault) {
    console.warn(fault);
    fail({ message: sayAtStart('shell.openFault'), mend: sayAtStart('shell.openFault.mend') });
  }
}

/** Goes on at once, unless the open event was edited since `before` was the open one: what was typed while a file was on its way is asked about too. */
function unlessEdited(before: unknown, then: () => void): void {
  if (documentStore.get()?.event === before) then();
  else leaving(then);
}

async function guarded<T>(answer: Promise<{ readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem }>, then: (value: T) => void): Promise<void> {
  const before = documentStore.get()?.event;
  sessionStore.set({ busy: true });
  const came = await answer;
  sessionStore.set({ busy: false });
  if (came.ok) unlessEdited(before, () => then(came.value));
  else fail(came.problem);
}

/** Opens the file at a path. */
export const openPath = (path: string): Promise<void> =>
  guarded(call('events.open', { path }), ({ path: at, text, modified }) => show(text, { path: at, modified }, false));

/** Largest text read from a file of the cook's choice, in bytes: what the host takes too. */
const mostBytes = 8_000_000;

/** Opens a file the page itself has read: where it lies is not known, so saving asks where to. */
export async function openOwnFile(file: File): Promise<void> {
  if (file.size > mostBytes) { fail({ message: sayAtStart('host.too-large', { path: file.name, megabytes: mostBytes / 1_000_000 }), mend: sayAtStart('host.too-large.mend') }); return; }
  const before = documentStore.get()?.event;
  try {
    const text = await file.text();
    unlessEdited(before, () => show(text, { path: null, modified: null }, false));
  } catch {
    fail({ message: sayAtStart('host.no-file', { path: file.name }), mend: sayAtStart('host.no-file.mend') });
  }
}

/** Opens a demo event; it is not on disk until it is saved. */
export const openDemo = (id: string): Promise<void> =>
  guarded(call('events.openDemo', { id }), ({ text }) => show(text, { path: null, modified: null }, false));

/** Opens what somebody else wrote to the file; the own work is kept aside and offered in the list, so that both are there. */
export async function lookAtOther(path: string): Promise<void> {
  const open = documentStore.get();
  if (open !== null) {
    holdOn();
    const kept = await keepCopy(open);
    if (!kept.ok) { fail(kept.problem); return; }
  }
  await openPath(path);
}

/** A time no file has: the host then asks before it writes over what is there. */
const neverSeen = 0;

/** Takes up work that was kept aside. It goes on being kept under the same name until it is saved. */
export const openKept = (id: string): Promise<void> =>
  guarded(call('recovery.read', { id }), ({ text, path, modified }) => {
    copyTaken(id);
    show(text, { path, modified: path === null ? null : (modified ?? neverSeen) }, true, id);
  });

function begin(today: string): void {
  documentStore.open(newEvent(today, sessionStore.get().settings), { path: null, modified: null }, { unsaved: true });
  sessionStore.set({ panel: null, problem: null, view: 'guests' });
}

/** A new, empty event. Its day is the host's: none is invented while the host has not said it. */
export function startNew(): void {
  const { info } = sessionStore.get();
  if (info === null) void guarded(call('app.info', {}), (came) => { sessionStore.set({ info: came }); begin(came.today); });
  else begin(info.today);
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

// Saves follow one another, so that each knows the file as the one before left it.
const turn = inTurn();

/** Saves where the event lies; asks for a name when it lies nowhere yet. @returns true when it is on disk. */
export async function save(): Promise<boolean> {
  const open = documentStore.get();
  if (open === null) return false;
  if (open.file.path === null || open.readOnly) return saveAs();
  const { openId } = open;
  return turn(async () => {
    const now = documentStore.get();
    if (now === null || now.openId !== openId || now.file.path === null) return false;
    return put(now, now.file.path, now.file.modified);
  });
}

/** The name a file is offered under: one that a newer program wrote keeps its own file to itself. */
export const nameToSave = (open: Pick<DocumentState, 'event' | 'readOnly'>): string => (open.readOnly ? sayAtStart('host.copy-name', { name: open.event.title }) : open.event.title);

/** Save as…: the host's window, or our panel with a name. */
export async function saveAs(): Promise<boolean> {
  const open = documentStore.get();
  if (open === null) return false;
  if (sessionStore.get().info?.dialogs !== true) {
    sessionStore.set({ panel: { kind: 'save' } });
    return false;
  }
  const answer = await call('events.chooseSave', { name: nameToSave(open) });
  if (!answer.ok) { fail(answer.problem); return false; }
  return answer.value.path === null ? false : write(answer.value.path, null, open.openId);
}

/** Writes the open event to a path. `expect`: the time of the file as last seen, so that somebody else's change is not written over. */
export async function write(path: string, expect: number | null, openId: string | undefined = documentStore.get()?.openId): Promise<boolean> {
  return turn(async () => {
    const open = documentStore.get();
    return open === null || open.openId !== openId ? false : put(open, path, expect);
  });
}

async function put({ openId, event, file, readOnly }: DocumentState, path: string, expect: number | null): Promise<boolean> {
  if (readOnly && path === file.path) {
    fail({ message: sayAtStart('host.newer-format', { path }), mend: sayAtStart('host.newer-format.mend') });
    return false;
  }
  const answer = await call('events.save', { path, text: serialiseEvent(event), expect });
  const stillOpen = documentStore.get()?.openId === openId;
  if (!answer.ok) {
    if (answer.problem.code === 'changed-outside' && stillOpen) sessionStore.set({ panel: { kind: 'changed', path }, busy: false });
    else fail(answer.problem);
    return false;
  }
  documentStore.saved(openId, event, { path: answer.value.path, modified: answer.value.modified });
  if (stillOpen) sessionStore.set({ panel: null, problem: answer.value.warning });
  return true;
}
