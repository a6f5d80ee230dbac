// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { menuCommands, type DesktopBridge, type MenuCommand } from '../../../shared/host/methods';
import { newEvent } from '../../../shared/event';
import { setTitle } from '../../../shared/edit';
import { runCommand } from '../../../src-renderer/app/commands';
import { hearMenu } from '../../../src-renderer/app/native-menu';
import { sessionStore } from '../../../src-renderer/app/session';
import { documentStore } from '../../../src-renderer/app/store';

type Listener = Parameters<DesktopBridge['onMenu']>[0];

function fakeBridge(): { readonly bridge: Pick<DesktopBridge, 'onMenu'>; readonly press: (command: MenuCommand, path?: string | null) => void; readonly heard: () => number } {
  const listeners = new Set<Listener>();
  return {
    bridge: { onMenu: (listener) => { listeners.add(listener); return () => void listeners.delete(listener); } },
    press: (command, path = null) => { for (const listener of listeners) listener(command, path); },
    heard: () => listeners.size,
  };
}

describe('the native menu', () => {
  beforeEach(() => {
    documentStore.close();
    sessionStore.set({ panel: null, problem: null, view: 'board' });
    document.body.replaceChildren();
  });

  it('hands every command on, with its path', () => {
    const { bridge, press } = fakeBridge();
    const run = vi.fn();
    hearMenu(bridge, run);
    for (const command of menuCommands) press(command, command === 'openPath' ? '/an/evening.brimful' : null);
    expect(run.mock.calls).toEqual(menuCommands.map((command) => [command, command === 'openPath' ? '/an/evening.brimful' : null]));
  });

  it('is not heard any longer once stopped, and not at all on the other hosts', () => {
    const { bridge, press, heard } = fakeBridge();
    const run = vi.fn();
    hearMenu(bridge, run)();
    press('save');
    expect(heard()).toBe(0);
    expect(run).not.toHaveBeenCalled();
    expect(() => hearMenu(undefined, run)()).not.toThrow();
  });

  it('leaves undo to a text that is being typed', () => {
    const field = document.createElement('input');
    field.dataset['draft'] = 'yes';
    document.body.append(field);
    field.focus();
    const ownUndo = vi.fn(() => true);
    Object.assign(document, { execCommand: ownUndo });
    const { bridge, press } = fakeBridge();
    const run = vi.fn();
    hearMenu(bridge, run);
    press('undo');
    expect(ownUndo).toHaveBeenCalledWith('undo');
    expect(run).not.toHaveBeenCalled();
    field.dataset['draft'] = 'no';
    press('undo');
    expect(run).toHaveBeenCalledWith('undo', null);
  });

  it('begins, undoes, redoes and shows the sheets of the open event', () => {
    const { bridge, press } = fakeBridge();
    hearMenu(bridge);
    press('print');
    expect(sessionStore.get().view).toBe('board');
    documentStore.open(newEvent({ id: 'one', title: 'One', day: '2026-12-12', timeZone: 'UTC' }), { path: '/one.brimful', modified: 1 });
    const first = documentStore.get()?.event;
    if (first === undefined) throw new Error('nothing is open');
    documentStore.edit(setTitle(first, 'Two'));
    press('undo');
    expect(documentStore.get()?.event.title).toBe('One');
    press('redo');
    expect(documentStore.get()?.event.title).toBe('Two');
    press('print');
    expect(sessionStore.get().view).toBe('sheets');
    press('new');
    expect(sessionStore.get().panel).toMatchObject({ kind: 'unsaved' });
    expect(documentStore.get()?.event.title).toBe('Two');
  });

  it('asks before another file takes the place of unsaved work', () => {
    documentStore.open(newEvent({ id: 'one', title: 'One', day: '2026-12-12', timeZone: 'UTC' }), { path: null, modified: null }, { unsaved: true });
    runCommand('openPath', '/other.brimful');
    expect(sessionStore.get().panel).toMatchObject({ kind: 'unsaved' });
    sessionStore.set({ panel: null });
    runCommand('openPath');
    expect(sessionStore.get().panel).toBeNull();
  });
});
