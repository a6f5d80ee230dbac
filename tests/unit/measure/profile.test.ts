import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import { earliestStart, latestStart, Profile } from '../../../shared/measure';

const booking = fc.record({ start: fc.integer({ min: 0, max: 100 }), length: fc.integer({ min: 0, max: 30 }), amount: fc.integer({ min: 1, max: 3 }) });

/** Use of each minute, counted one by one. */
const countedBy = (list: readonly { start: number; length: number; amount: number }[]) => (at: number): number =>
  list.reduce((n, b) => n + (b.start <= at && at < b.start + b.length ? b.amount : 0), 0);

describe('a profile of use', () => {
  test('agrees with counting minute by minute', () => {
    fc.assert(fc.property(fc.array(booking, { maxLength: 12 }), booking, (list, asked) => {
      const profile = new Profile(4);
      for (const b of list) profile.add(b.start, b.start + b.length, b.amount);
      const used = countedBy(list);
      const minutes = Array.from({ length: asked.length }, (_, i) => asked.start + i);
      const fits = minutes.every((m) => used(m) + asked.amount <= 4);
      const found = profile.conflict(asked.start, asked.start + asked.length, asked.amount);
      expect(found === null).toBe(fits);
      expect(found === null || used(Math.max(found.from, asked.start)) + asked.amount > 4).toBe(true);
    }), { numRuns: 300 });
  });
  test('what is given back is free again', () => {
    const profile = new Profile(1);
    profile.add(10, 20, 1);
    expect(profile.conflict(15, 16, 1)).toEqual({ from: 10, to: 20 });
    profile.add(10, 20, -1);
    expect(profile.conflict(0, 100, 1)).toBeNull();
  });
  test('one job may begin as another ends; nothing at all always fits', () => {
    const profile = new Profile(1);
    profile.add(10, 20, 1);
    expect(profile.conflict(20, 30, 1)).toBeNull();
    expect(profile.conflict(0, 10, 1)).toBeNull();
    expect(profile.conflict(12, 12, 1)).toBeNull();
  });
});

describe('how long something has been free', () => {
  test('agrees with walking back minute by minute', () => {
    fc.assert(fc.property(fc.array(booking, { maxLength: 10 }), fc.integer({ min: 0, max: 130 }), fc.integer({ min: 1, max: 3 }), (list, until, amount) => {
      const profile = new Profile(4);
      for (const b of list) profile.add(b.start, b.start + b.length, b.amount);
      const used = countedBy(list);
      let since = until;
      while (since > -1 && used(since - 1) + amount <= 4) since -= 1;
      expect(profile.freeSince(until, amount)).toBe(since < 0 ? Number.NEGATIVE_INFINITY : since);
    }), { numRuns: 300 });
  });
});

describe('the search for a start', () => {
  test('finds the latest and the earliest whole minute that fit, as trying every minute does', () => {
    fc.assert(fc.property(fc.array(booking, { maxLength: 10 }), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 3 }), (list, length, amount) => {
      const profile = new Profile(4);
      for (const b of list) profile.add(b.start, b.start + b.length, b.amount);
      const used = countedBy(list);
      const claims = [{ profile, amount, from: 0, to: length }];
      const fits = Array.from({ length: 121 }, (_, s) => s).filter((s) => Array.from({ length }, (_, i) => s + i).every((m) => used(m) + amount <= 4));
      expect(latestStart(claims, 0, 120)).toBe(fits.at(-1) ?? null);
      expect(earliestStart(claims, 0, 120)).toBe(fits[0] ?? null);
    }), { numRuns: 300 });
  });
  test('several claims must fit together', () => {
    const [pot, cook] = [new Profile(1), new Profile(1)];
    pot.add(50, 60, 1);
    cook.add(35, 45, 1);
    const claims = [{ profile: cook, amount: 1, from: 0, to: 5 }, { profile: pot, amount: 1, from: 5, to: 20 }];
    expect(latestStart(claims, 0, 55)).toBe(55);
    expect(latestStart(claims, 0, 54)).toBe(30);
    expect(earliestStart(claims, 31, 60)).toBe(55);
  });
  test('a helper who never comes is no help', () => {
    const gone = new Profile(1);
    gone.add(-1e7, 1e7, 1);
    expect(latestStart([{ profile: gone, amount: 1, from: 0, to: 5 }], 0, 100)).toBeNull();
    expect(earliestStart([{ profile: gone, amount: 1, from: 0, to: 5 }], 0, 100)).toBeNull();
  });
});
