// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { takeDayOrder } from '../../../shared/edit';
import { parseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { betterDay } from '../../../src-renderer/app/improve-worker';
import { dayGains, holds } from '../../../src-renderer/views/day/gains';

const demo = (name: string): Event => {
  const read = parseEvent(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8'));
  if (!read.ok) throw new Error('the demo does not open');
  return read.event;
};
const fair = demo('school-fair-stall');
const worth = { undone: 0, unfair: 10, lateEvening: 0, standing: 0 };

describe('a better day', () => {
  test('is found the same way each time, can be sent, and gives what its words say', () => {
    const found = betterDay(fair, 7, 25);
    if (found === null) throw new Error('the fair has a better day');
    expect(structuredClone(found)).toEqual(found);
    expect(betterDay(fair, 7, 25)).toEqual(found);
    expect(found.moved).toBeGreaterThan(0);
    expect(found.gains.map((m) => m.id)).toEqual(['view.day.better.standing']);
    const taken = takeDayOrder(fair, found.order);
    if ('problem' in taken) throw new Error(taken.problem.id);
    const [now, other] = [plan(fair), plan(taken.event)];
    expect(holds(now, other)).toBe(true);
    const placed = (p: typeof now): string[] => p.day.tasks.map((t) => `${t.id} ${t.start} ${t.who.join(' ')}`);
    const known = new Set(placed(now));
    expect(placed(other).filter((line) => !known.has(line))).toHaveLength(found.moved);
  });

  test('that nobody would notice is not told', () => {
    const now = plan(fair);
    expect(dayGains(now, now, { ...worth, standing: 14 }, worth).gains).toEqual([]);
    expect(dayGains(now, now, { ...worth, standing: 15 }, worth).gains.map((m) => m.id)).toEqual(['view.day.better.standing']);
    expect(dayGains(now, now, worth, { ...worth, unfair: 12 }).costs).toEqual([]);
    expect(dayGains(now, now, worth, { ...worth, unfair: 13, lateEvening: 5 }).costs.map((m) => m.id)).toEqual(['view.day.better.uneven', 'view.day.better.eveningMore']);
  });

  test('tells what it gives by what the two days hold: what fits, when the last job ends', () => {
    const now = plan(fair);
    const shorter = { ...now, day: { ...now.day, overloads: [], tasks: now.day.tasks.filter((t) => t.end < 1080) } };
    const last = Math.max(...shorter.day.tasks.filter((t) => t.attention > 0 && t.who.length > 0 && t.kind !== 'rest').map((t) => t.end));
    const { gains } = dayGains({ ...now, day: { ...now.day, overloads: [{ task: 'a', also: ['b'], lateMinutes: 5, message: { id: 'timeline.task.serve' } }] } }, shorter, worth, worth);
    expect(gains[0]).toEqual({ id: 'view.day.better.fits', params: { jobs: 2 } });
    expect(gains[1]).toMatchObject({ id: 'view.day.better.end', params: { at: last } });
    expect(holds(shorter, now)).toBe(now.day.overloads.length === 0);
  });
});
