// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { newEvent, serialiseEvent, type Event } from '../../../shared/event';
import { setTitle } from '../../../shared/edit';
import { lookAtOther, openKept, openPath, save, startNew, write } from '../../../src-renderer/app/files';
import { keepAside } from '../../../src-renderer/app/keeping';
import { letGo } from '../../../src-renderer/app/kept-copies';
import { sessionStore } from '../../../src-renderer/app/session';
import { documentStore, type DocumentState } from '../../../src-renderer/app/store';

interface Kept { text: string; path: string | null; modified: number | null }
interface Given { readonly path: string; readonly text: string; readonly expect: number | null; readonly id: string; readonly modified: number | null }

const ok = (value: unknown) => ({ ok: true, value });
const no = (code: string) => ({ ok: false, problem: { code, message: code } });

/** A host in memory: files and kept copies; a call may be held back until it is let go. */
class FakeHost {
  readonly files = new Map<string, { text: string; modified: number }>();
  readonly kept = new Map<string, Kept>();
  readonly calls: string[] = [];
  readonly held = new Map<string, Promise<void>>();
  keepFails = false;
  private time = 100;

  hold(method: string): () => void {
    const gate = new AbortController();
    this.held.set(method, new Promise((resolve) => { gate.signal.addEventListener('abort', () => resolve()); }));
    return () => { this.held.delete(method); gate.abort(); };
  }

  put(path: string, text: string): number {
    this.time += 1;
    this.files.set(path, { text, modified: this.time });
    return this.time;
  }

  readonly call = async (method: string, input: unknown): Promise<unknown> => {
    this.calls.push(method);
    await this.held.get(method);
    return this.answer(method, input as Given);
  };

  private answer(method: string, { path, text, expect: seen, id, modified }: Given): unknown {
    const there = this.files.get(path);
    switch (method) {
      case 'app.info': return ok({ host: 'local', version: '1', dialogs: false, today: '2027-03-01', now: 0, openPath: null, folder: '/events' });
      case 'events.open': return there === undefined ? no('no-file') : ok({ path, ...there });
      case 'events.save':
        if (seen !== null && there !== undefined && there.modified !== seen) return no('changed-outside');
        return ok({ path, modified: this.put(path, text), warning: null });
      case 'recovery.keep':
        if (this.keepFails) return no('full');
        this.kept.set(id, { text, path, modified: modified ?? null });
        return ok({ done: true });
      case 'recovery.read': return this.kept.has(id) ? ok(this.kept.get(id)) : no('no-recovery');
      case 'recovery.discard': this.kept.delete(id); return ok({ done: true });
      default: return ok({ done: true });
    }
  }
}

let host: FakeHost;
let stop: () => void;
const file = (id: string, title = id): Event => newEvent({ id, title, day: '2026-12-12', timeZone: 'UTC' });
const state = (): DocumentState => {
  const now = documentStore.get();
  if (now === null) throw new Error('nothing is open');
  return now;
};
const rename = (title: string): void => void documentStore.edit(setTitle(state().event, title));
const titles = (): string[] => [...host.kept.values()].map(({ text }) => (JSON.parse(text) as { title: string }).title).sort();
const titleIn = (path: string): string => (JSON.parse(host.files.get(path)?.text ?? '{}') as { title: string }).title;
const leave = (): boolean => window.dispatchEvent(new window.Event('beforeunload', { cancelable: true }));
const rest = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);

beforeEach(() => {
  vi.useFakeTimers();
  host = new FakeHost();
  Object.assign(window, { brimful: { call: host.call, onMenu: () => () => {} } });
  documentStore.close();
  sessionStore.set({ info: { host: 'local', version: '1', dialogs: false, today: '2026-12-12', now: 0, openPath: null, folder: '/events' }, panel: null, problem: null, busy: false });
  host.put('/a.brimful', serialiseEvent(file('a')));
  host.put('/b.brimful', serialiseEvent(file('b')));
  stop = keepAside();
});
afterEach(() => {
  stop();
  vi.useRealTimers();
});

describe('work kept aside', () => {
  it('does not write over a file that became newer meanwhile', async () => {
    await openPath('/a.brimful');
    rename('mine');
    await rest(1500);
    const [id = ''] = host.kept.keys();
    documentStore.close();
    host.put('/a.brimful', serialiseEvent(file('a', 'theirs')));
    await openKept(id);
    expect(state()).toMatchObject({ unsaved: true, event: { title: 'mine' } });
    expect(await save()).toBe(false);
    expect(titleIn('/a.brimful')).toBe('theirs');
    expect(sessionStore.get().panel).toEqual({ kind: 'changed', path: '/a.brimful' });
  });

  it('of before this version, without a time, asks before it writes over a file', async () => {
    host.kept.set('old', { text: serialiseEvent(file('a', 'mine')), path: '/a.brimful', modified: null });
    await openKept('old');
    expect(await save()).toBe(false);
    expect(titleIn('/a.brimful')).toBe('a');
  });

  it('is let go when undo leads back to what is saved', async () => {
    await openPath('/a.brimful');
    rename('mine');
    await rest(1500);
    expect(titles()).toEqual(['mine']);
    documentStore.undo();
    await rest(1500);
    expect(titles()).toEqual([]);
  });

  it('is let go when it is saved, and not revived by a keep that comes late', async () => {
    await openPath('/a.brimful');
    rename('mine');
    const go = host.hold('recovery.keep');
    await rest(1500);
    const saved = save();
    await rest(10);
    go();
    expect(await saved).toBe(true);
    await rest(10);
    expect(titles()).toEqual([]);
  });

  it('of two files with the same event inside are two', async () => {
    host.put('/copy.brimful', serialiseEvent(file('a')));
    await openPath('/a.brimful');
    rename('first');
    await rest(1500);
    await openPath('/copy.brimful');
    rename('second');
    await rest(1500);
    expect(titles()).toEqual(['first', 'second']);
  });

  it('is there once for every time another version was looked at', async () => {
    for (const own of ['first', 'second']) {
      await openPath('/a.brimful');
      rename(own);
      await lookAtOther('/a.brimful');
    }
    expect(titles()).toEqual(['first', 'second']);
  });

  it('stays one copy when it is taken up again and changed', async () => {
    await openPath('/a.brimful');
    rename('first');
    await rest(1500);
    const [id = ''] = host.kept.keys();
    await openKept(id);
    rename('second');
    await rest(1500);
    expect([...host.kept.keys()]).toEqual([id]);
    expect(titles()).toEqual(['second']);
  });

  it('that is not wanted goes when its document does, and not when that is called off', async () => {
    await openPath('/a.brimful');
    rename('mine');
    await rest(1500);
    letGo(state().openId);
    await openPath('/gone.brimful');
    await rest(10);
    expect(titles()).toEqual(['mine']);
    await openPath('/b.brimful');
    await rest(10);
    expect(titles()).toEqual([]);
  });

  it('does not wait longer than five seconds while changes go on', async () => {
    await openPath('/a.brimful');
    for (let n = 0; n < 12; n += 1) {
      rename(`change ${n}`);
      await rest(500);
    }
    expect(titles()).toHaveLength(1);
  });

  it('is told when it fails, tried again, and the telling ends', async () => {
    host.keepFails = true;
    await openPath('/a.brimful');
    rename('mine');
    await rest(1500);
    expect(sessionStore.get().keepFault).toMatchObject({ code: 'full' });
    host.keepFails = false;
    await rest(6000);
    expect(sessionStore.get().keepFault).toBeNull();
    expect(titles()).toEqual(['mine']);
  });

  it('that was let go by undo is kept again on the way out after redo', async () => {
    await openPath('/a.brimful');
    rename('mine');
    await rest(1500);
    documentStore.undo();
    await rest(1500);
    documentStore.redo();
    window.dispatchEvent(new window.Event('pagehide'));
    await rest(0);
    expect(titles()).toEqual(['mine']);
  });

  it('is kept at once when the window is hidden or left', async () => {
    await openPath('/a.brimful');
    rename('mine');
    window.dispatchEvent(new window.Event('pagehide'));
    await rest(0);
    expect(titles()).toEqual(['mine']);
  });
});

describe('leaving the local window', () => {
  it('is asked about only while there are unsaved changes', async () => {
    await openPath('/a.brimful');
    expect(leave()).toBe(true);
    rename('mine');
    expect(leave()).toBe(false);
    documentStore.undo();
    expect(leave()).toBe(true);
  });

  it('is the desktop program’s own question there', async () => {
    const { info } = sessionStore.get();
    if (info !== null) sessionStore.set({ info: { ...info, host: 'desktop' } });
    await openPath('/a.brimful');
    rename('mine');
    expect(leave()).toBe(true);
  });
});

describe('a save', () => {
  it('lands on the document it was made from, also when another one is open by then', async () => {
    await openPath('/a.brimful');
    rename('mine');
    const go = host.hold('events.save');
    const saved = save();
    await rest(10);
    await openPath('/b.brimful');
    rename('b changed');
    go();
    expect(await saved).toBe(true);
    expect(titleIn('/a.brimful')).toBe('mine');
    expect(state()).toMatchObject({ unsaved: true, file: { path: '/b.brimful' }, event: { title: 'b changed' } });
    await save();
    expect([titleIn('/a.brimful'), titleIn('/b.brimful')]).toEqual(['mine', 'b changed']);
  });

  it('asked for twice in a row is no change from outside', async () => {
    await openPath('/a.brimful');
    rename('mine');
    const go = host.hold('events.save');
    const both = [save(), save()];
    await rest(10);
    go();
    expect(await Promise.all(both)).toEqual([true, true]);
    expect(sessionStore.get()).toMatchObject({ panel: null, problem: null });
    expect(titleIn('/a.brimful')).toBe('mine');
  });

  it('followed by a change and another save writes both', async () => {
    await openPath('/a.brimful');
    rename('first');
    const go = host.hold('events.save');
    const one = save();
    await rest(10);
    rename('second');
    const two = save();
    go();
    expect(await Promise.all([one, two])).toEqual([true, true]);
    expect(titleIn('/a.brimful')).toBe('second');
    expect(state().unsaved).toBe(false);
  });

  it('keeps what was changed while it was on its way', async () => {
    await openPath('/a.brimful');
    rename('first');
    await rest(1500);
    const go = host.hold('events.save');
    const one = save();
    await rest(10);
    rename('second');
    go();
    await one;
    await rest(1500);
    expect(state().unsaved).toBe(true);
    expect(titles()).toEqual(['second']);
  });
});

describe('an event of a newer program', () => {
  it('is not written over its own file', async () => {
    await openPath('/a.brimful');
    documentStore.open(state().event, { path: '/a.brimful', modified: 1 }, { readOnly: true });
    const before = host.files.get('/a.brimful');
    expect(await write('/a.brimful', null)).toBe(false);
    expect(host.files.get('/a.brimful')).toBe(before);
    expect(sessionStore.get().problem?.message).toContain('newer');
    expect(await write('/other.brimful', null)).toBe(true);
    expect(state()).toMatchObject({ readOnly: false, file: { path: '/other.brimful' } });
  });
});

describe('a new event', () => {
  it('waits for the host to say what day it is', async () => {
    sessionStore.set({ info: null });
    startNew();
    expect(documentStore.get()).toBeNull();
    await rest(10);
    expect(state().event.day).toBe('2027-03-01');
  });
});
