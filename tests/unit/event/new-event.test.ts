import { describe, expect, it } from 'vitest';
import { checkEvent, formatsFor, newEvent, parseEvent, serialiseEvent } from '../../../shared/event';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('a new event', () => {
  const event = newEvent({ id: 'a', title: 'Party', day: '2026-12-12' });
  it('is sound, and the same after saving', () => {
    expect(checkEvent(event)).toEqual([]);
    expect(parseEvent(serialiseEvent(event))).toEqual({ ok: true, event, readOnly: false, notes: [] });
  });
  it('starts with one wave of nobody, one burner, one cook and no dishes', () => {
    expect(event.guests.waves.map((w) => [w.from, w.to, w.counts.adult])).toEqual([[660, 900, 0]]);
    expect(event.kitchen.burners.length).toBe(1);
    expect(event.people.map((p) => p.id)).toEqual(['cook']);
    expect(event.menu.dishes).toEqual([]);
    expect(event.guests.higherRisk).toBeNull();
  });
  it('takes the times and preferences it is given', () => {
    const late = newEvent({ id: 'b', title: 'Late', day: '2026-12-12', opensAt: 1200, closesAt: 1560, preferences: { units: 'us' } });
    expect([late.opensAt, late.closesAt, late.preferences.units, late.preferences.paper]).toEqual([1200, 1560, 'us', 'a4']);
  });
  it('cannot be made with a day that is none', () => {
    expect(() => newEvent({ id: 'a', title: 'x', day: 'soon' })).toThrow('day');
  });
});

describe('formats of an event', () => {
  const { preferences } = newEvent({ id: 'a', title: 'x', day: '2026-12-12' });
  const metric = formatsFor(preferences, '2026-12-12');
  const us = formatsFor({ ...preferences, units: 'us' }, '2026-12-12');
  it('round as a kitchen does, in the cook\'s units', () => {
    expect(plain(metric.amount({ amount: '2400', unit: 'g' }))).toBe('2.4 kg');
    expect(plain(us.amount({ amount: '1.5', unit: 'cup' }))).toBe('1½ cups');
    expect(plain(us.figure(1, 'kg'))).toBe('2 lb and 3½ oz');
  });
  it('show what is no amount as it stands', () => {
    expect(plain(metric.amount({ amount: 'some', unit: 'g' }))).toBe('some g');
    expect(plain(metric.amount({ amount: '3', unit: 'jar' }))).toBe('3 jar');
  });
});
