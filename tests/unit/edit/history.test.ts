import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amend, closeGroup, longestHistory, record, redo, redoName, setHeadcount, setTitle, startHistory, undo, undoName, type EditResult, type History } from '../../../shared/edit';
import { newEvent, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { arbitraryEvent } from '../event/arbitrary-event';
import { randomEdit } from './random-edit';

const done = (result: EditResult): { event: Event; name: Parameters<typeof record>[2] } => {
  if ('problem' in result) throw new Error(JSON.stringify(result));
  return result;
};
const event = newEvent({ id: 'a', title: 'First', day: '2026-12-12' });
const titled = (history: History, title: string, group: string | null = null): History => {
  const { event: after, name } = done(setTitle(history.present, title));
  return record(history, after, name, group);
};

describe('two hundred random edits', () => {
  it('all undone give the original bytes, all done again the last', () => {
    fc.assert(fc.property(arbitraryEvent, fc.array(randomEdit, { minLength: 200, maxLength: 200 }), (start, edits) => {
      const original = serialiseEvent(start);
      let history = startHistory(start);
      const bytes = [original];
      for (const edit of edits) {
        const result = edit(history.present);
        if ('problem' in result) continue;
        history = record(history, result.event, result.name);
        bytes.push(serialiseEvent(history.present));
      }
      const last = history.present;
      expect(history.past.length).toBe(bytes.length - 1);
      for (const expected of bytes.toReversed()) {
        expect(serialiseEvent(history.present)).toBe(expected);
        history = undo(history);
      }
      expect(serialiseEvent(history.present)).toBe(original);
      expect(serialiseEvent(start)).toBe(original);
      while (redoName(history) !== null) history = redo(history);
      expect(history.present).toBe(last);
    }), { numRuns: 12 });
  });
  it('each leave an event that can be saved and opened again', () => {
    fc.assert(fc.property(arbitraryEvent, fc.array(randomEdit, { maxLength: 40 }), (start, edits) => {
      let now = start;
      for (const edit of edits) {
        const result = edit(now);
        if ('event' in result) now = result.event;
      }
      const read = parseEvent(serialiseEvent(now));
      expect(read).toEqual({ ok: true, event: now, readOnly: false, notes: [] });
    }), { numRuns: 60 });
  });
});

describe('history', () => {
  it('names what it undoes and redoes', () => {
    const history = titled(startHistory(event), 'Second');
    expect(undoName(history)).toEqual({ id: 'edit.title', params: { title: 'Second' } });
    expect(undo(history).present).toBe(event);
    expect(redoName(undo(history))).toEqual({ id: 'edit.title', params: { title: 'Second' } });
    expect(redo(undo(history)).present.title).toBe('Second');
  });
  it('stays as it is with nothing to undo or redo, or when nothing changed', () => {
    const history = startHistory(event);
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
    expect(undoName(history)).toBeNull();
    expect(record(history, event, { id: 'edit.title', params: { title: 'First' } })).toBe(history);
  });
  it('makes one step of a drag', () => {
    let history = titled(startHistory(event), 'Before');
    for (const title of ['a', 'ab', 'abc']) history = titled(history, title, 'title');
    expect(history.past.length).toBe(2);
    expect(undo(history).present.title).toBe('Before');
  });
  it('starts a new step after the drag has ended, after an undo, and for another group', () => {
    const dragged = titled(titled(startHistory(event), 'a', 'title'), 'ab', 'title');
    expect(titled(closeGroup(dragged), 'abc', 'title').past.length).toBe(2);
    expect(titled(dragged, 'abc', 'other').past.length).toBe(2);
    expect(titled(dragged, 'abc').past.length).toBe(2);
    const two = titled(closeGroup(dragged), 'abc', 'title');
    expect(titled(undo(two), 'x', 'title').past.length).toBe(2);
  });
  it('forgets what could be done again after a new edit', () => {
    const history = titled(undo(titled(startHistory(event), 'a')), 'b');
    expect(history.future).toEqual([]);
  });
  it('keeps at most so many steps', () => {
    let history = startHistory(event);
    for (let n = 0; n < longestHistory + 20; n++) {
      const { event: after, name } = done(setHeadcount(history.present, n, 0));
      history = record(history, after, name);
    }
    expect(history.past.length).toBe(longestHistory);
  });
});
describe('a note in the history', () => {
  const event = newEvent({ id: 'a', title: 'Party', day: '2026-12-12' });
  const row = { sheet: 'fry' as const, version: 'A', at: '2026-12-10T09:05', fingerprint: '0123456789abcdef' };
  const noted = (e: Event): Event => ({ ...e, issuedSheets: [...e.issuedSheets, row] });
  it('is no step, and neither undo nor redo takes it away', () => {
    const titled = setTitle(event, 'Feast');
    if ('problem' in titled) throw new Error('expected an event');
    const before = record(startHistory(event), titled.event, titled.name);
    const after = amend(before, noted);
    expect(after.past.length).toBe(1);
    expect(undoName(after)).toEqual(titled.name);
    const back = undo(after);
    expect([back.present.title, back.present.issuedSheets]).toEqual(['Party', [row]]);
    expect([redo(back).present.title, redo(back).present.issuedSheets]).toEqual(['Feast', [row]]);
    expect(redo(back).present).toBe(after.present);
  });
});
