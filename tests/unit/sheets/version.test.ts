import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { nextLetter, printsOf, shiftDay, sheetsOf, versionOf } from '../../../shared/sheets';
import { lanternEvent, lanternPlan } from './lantern';

const issued = (...list: readonly [string, string, string, string?][]) =>
  lanternEvent({ issuedSheets: list.map(([sheet, version, fingerprint, id]) => ({ sheet, version, fingerprint, at: '2026-12-10T10:00', ...(id === undefined ? {} : { id }) })) });

const fry = (fingerprint: string, id = 'fry-north') => ({ kind: 'fry', id, fingerprint }) as const;

describe('version letters', () => {
  it('count on after Z', () => {
    expect(['A', 'Y', 'Z', 'AZ', 'BC'].map(nextLetter)).toEqual(['B', 'Z', 'AA', 'BA', 'BD']);
  });

  it('begin with A', () => {
    expect(versionOf(issued(), fry('x'))).toEqual({ version: 'A', replaces: null, issued: false });
  });

  it('stay while the words on the paper stay, and name what that print replaced', () => {
    expect(versionOf(issued(['fry', 'A', 'x'], ['fry', 'B', 'y']), fry('y'))).toEqual({ version: 'B', replaces: 'A', issued: true });
  });

  it('move on when they differ, also back to an earlier state', () => {
    expect(versionOf(issued(['fry', 'A', 'x'], ['fry', 'B', 'y']), fry('z'))).toEqual({ version: 'C', replaces: 'B', issued: false });
    expect(versionOf(issued(['fry', 'A', 'x'], ['fry', 'B', 'y']), fry('x'))).toEqual({ version: 'C', replaces: 'B', issued: false });
  });

  it('are kept apart by kind, and AA comes after Z whatever the order on file', () => {
    expect(versionOf(issued(['day', 'C', 'x']), fry('x')).version).toBe('A');
    expect(versionOf(issued(['fry', 'AA', 'x'], ['fry', 'Z', 'y']), fry('q'))).toMatchObject({ version: 'AB', replaces: 'AA' });
  });
});

const of = (kind: string, more: Parameters<typeof lanternPlan>[0], printedAt = '9:05') => {
  const plan = lanternPlan(more);
  return sheetsOf(plan, formatsFor(plan.event.preferences, plan.event.day), { paper: 'a4', printedAt }).find((s) => s.kind === kind)?.fingerprint;
};

describe('prints of one sheet among several of its kind', () => {
  const north = ['fry', 'B', 'x', 'fry-north'] as const;

  it('say nothing of the sheet of another station', () => {
    expect(versionOf(issued([...north]), fry('x'))).toMatchObject({ version: 'B', issued: true });
    expect(versionOf(issued([...north]), fry('x', 'fry-south'))).toEqual({ version: 'A', replaces: null, issued: false });
  });

  it('of an old file, without an id, stand for all of the kind and match its joint fingerprint', () => {
    const old = issued(['fry', 'A', 'joint']);
    expect(versionOf(old, fry('x'), 'joint')).toEqual({ version: 'A', replaces: null, issued: true });
    expect(versionOf(old, fry('joint'), 'other')).toEqual({ version: 'B', replaces: 'A', issued: false });
    expect(printsOf(issued(['fry', 'A', 'joint'], [...north], ['fry', 'C', 'y', 'fry-south']), fry('x')).map((s) => s.version)).toEqual(['A', 'B']);
  });
});

describe('fingerprints of sheets', () => {
  it('do not depend on when or on which paper it was printed', () => {
    expect(of('fry', {}, '9:05')).toBe(of('fry', {}, '17:40'));
  });

  it('change with the batches, and only on the sheets that show them', () => {
    expect(of('fry', { batches: 24 })).not.toBe(of('fry', { batches: 25 }));
    expect(of('shopping', { batches: 24 })).toBe(of('shopping', { batches: 25 }));
  });
});

const iso = (n: number): string => new Date(n * 86400000).toISOString().slice(0, 10);

describe('days', () => {
  it('shift across months, leap days and years', () => {
    expect(shiftDay('2026-12-12', -1)).toBe('2026-12-11');
    expect(shiftDay('2028-03-01', -1)).toBe('2028-02-29');
    expect(shiftDay('2026-12-31', 1)).toBe('2027-01-01');
    expect(shiftDay('2026-01-01', -14)).toBe('2025-12-18');
  });

  it('agree with the calendar of the language for any day of two centuries', () => {
    fc.assert(fc.property(fc.integer({ min: -36500, max: 36500 }), fc.integer({ min: -400, max: 400 }), (day, by) => {
      expect(shiftDay(iso(day), by)).toBe(iso(day + by));
    }));
  });
});
