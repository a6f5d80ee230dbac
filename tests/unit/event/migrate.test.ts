import { describe, expect, it } from 'vitest';
import { currentVersion, migrate, migrations, newEvent, parseEvent, versionOf, type Migration } from '../../../shared/event';

/** A step only this test knows: before the first format the title was called `name`. */
const renameTitle: Migration = { from: 0, apply: ({ name, ...rest }) => ({ ...rest, title: name }) };
const old = { ...newEvent({ id: 'a', title: 'x', day: '2026-12-12' }), format: 'brimful-event/0', title: undefined, name: 'Old party', mine: { kept: true } };

const add = (from: number): Migration => ({ from, apply: (raw) => ({ ...raw, steps: [...(Array.isArray(raw['steps']) ? raw['steps'] : []), from] }) });

describe('older formats', () => {
  it('are brought up to date step by step, unknown fields untouched', () => {
    const read = parseEvent(JSON.stringify(old), [renameTitle]);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.event.title).toBe('Old party');
    expect(read.event.format).toBe('brimful-event/1');
    expect(read.event['mine']).toEqual({ kept: true });
    expect(read.readOnly).toBe(false);
    expect(read.notes).toEqual([{ id: 'event.note.upgraded', params: { from: 'brimful-event/0' } }]);
  });
  it('go through every step in order', () => {
    expect(migrate({ format: 'brimful-event/1' }, [add(3), add(1), add(2)], 4)).toEqual({ format: 'brimful-event/4', steps: [1, 2, 3] });
  });
  it('are refused when a step is missing', () => {
    expect(migrate({ format: 'brimful-event/0' }, [])).toBeNull();
    expect(parseEvent(JSON.stringify(old)).ok).toBe(false);
  });
  it('leave the current and newer ones alone', () => {
    const raw = { format: 'brimful-event/7', a: 1 };
    expect(migrate(raw)).toBe(raw);
    expect(migrate({ format: 'else' })).toBeNull();
  });
  it('have a step from every version to the next', () => {
    expect(migrations.map((m) => m.from).toSorted((a, b) => a - b)).toEqual(Array.from({ length: currentVersion - 1 }, (_, at) => at + 1));
  });
});

describe('format names', () => {
  it.each([['brimful-event/1', 1], ['brimful-event/42', 42], ['brimful-event/', null], ['brimful-event/99999', null], [3, null], [undefined, null]])('%s is version %s', (format, version) => {
    expect(versionOf(format)).toBe(version);
  });
});
