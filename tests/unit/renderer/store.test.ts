import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { changeWave, moveWave, setHeadcount, setTitle } from '../../../shared/edit';
import { documentStore, type DocumentState } from '../../../src-renderer/app/store';

function demo(): Event {
  const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
  if (!parsed.ok) throw new Error('the demo does not open');
  return parsed.event;
}
const state = (): DocumentState => {
  const now = documentStore.get();
  if (now === null) throw new Error('nothing is open');
  return now;
};
const headcount = (event: Event, adults: number) => setHeadcount(event, adults, event.guests.headcount.children);

describe('an event whose plan cannot be worked out', () => {
  it('leaves the open one with its own history', () => {
    documentStore.open(demo(), { path: '/a.brimful', modified: 1 });
    documentStore.edit(headcount(state().event, 90));
    const before = state();
    // Nothing that `parseEvent` accepts does this: a broken event stands in for a fault of the program.
    expect(() => documentStore.open({ ...demo(), menu: { dishes: null } } as unknown as Event, { path: '/b.brimful', modified: 1 })).toThrow(TypeError);
    expect(state()).toBe(before);
    documentStore.undo();
    expect(state().event.guests.headcount).toEqual(demo().guests.headcount);
    expect(state().file.path).toBe('/a.brimful');
  });
});

describe('the open document', () => {
  beforeEach(() => documentStore.open(demo(), { path: '/somewhere/evening.brimful', modified: 1 }));

  it('is saved when opened from a file, and unsaved after an edit', () => {
    expect(state().unsaved).toBe(false);
    expect(documentStore.edit(headcount(state().event, 90))).toBeNull();
    expect(state().unsaved).toBe(true);
    expect(state().plan.guests.adults.value).toBe(90);
    documentStore.saved(state().openId, state().event, { path: '/somewhere/evening.brimful', modified: 2 });
    expect(state().unsaved).toBe(false);
  });

  it('is saved again after undoing back to what was saved', () => {
    const first = state().event;
    documentStore.edit(headcount(first, 90));
    documentStore.undo();
    expect(state().event).toBe(first);
    expect(state().unsaved).toBe(false);
    expect(state().redoName).not.toBeNull();
  });

  it('gives a wrong edit back as its problem and keeps the last sound event', () => {
    const before = state();
    const problem = documentStore.edit(changeWave(before.event, 'noon', { to: 10 }));
    expect(problem).not.toBeNull();
    expect(state()).toBe(before);
  });

  it('says what an edit changed, compared with the plan before it', () => {
    const { plan } = state();
    documentStore.edit(headcount(state().event, 120));
    const { changes } = state();
    expect(changes?.before).toBe(plan);
    expect(changes?.list.length).toBeGreaterThan(3);
    documentStore.readChanges();
    expect(state().changes).toBeNull();
  });

  it('makes one step of a whole drag, compared with the plan before the drag', () => {
    const { event, plan } = state();
    const bytes = serialiseEvent(event);
    for (const minutes of [5, 10, 15, 20]) documentStore.edit(moveWave(documentStore.base('drag-1'), 'afternoon', minutes), 'drag-1');
    expect(state().event.guests.waves.find((w) => w.id === 'afternoon')?.from).toBe(855 + 20);
    expect(state().changes?.before).toBe(plan);
    expect(state().undoName).toMatchObject({ params: { from: 855, to: 875 } });
    documentStore.undo();
    expect(serialiseEvent(state().event)).toBe(bytes);
    expect(state().undoName).toBeNull();
  });

  it('makes two steps of two drags', () => {
    documentStore.edit(moveWave(documentStore.base('drag-1'), 'afternoon', 5), 'drag-1');
    documentStore.edit(moveWave(documentStore.base('drag-2'), 'afternoon', 5), 'drag-2');
    documentStore.undo();
    expect(state().event.guests.waves.find((w) => w.id === 'afternoon')?.from).toBe(860);
  });

  it('keeps the formats while only guests change, and renews them with the preferences or the day', () => {
    const { formats } = state();
    documentStore.edit(headcount(state().event, 70));
    expect(state().formats).toBe(formats);
    documentStore.edit({ event: { ...state().event, preferences: { ...state().event.preferences, clock: '12' } }, name: { id: 'edit.higherRisk' } });
    expect(state().formats.clock(780)).toMatch(/1:00.pm/);
  });

  it('takes no edit while it may only be read', () => {
    documentStore.open(demo(), { path: null, modified: null }, { readOnly: true });
    documentStore.edit(setTitle(state().event, 'Another'));
    expect(state().event.title).toBe('Lantern Evening');
  });

  it('an edit that changes nothing is no step', () => {
    documentStore.edit(setTitle(state().event, state().event.title));
    documentStore.edit({ event: state().event, name: { id: 'edit.higherRisk' } });
    expect(state().changes?.list ?? []).toEqual([]);
  });
});
