import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { takeDayOrder } from '../../../shared/edit';
import { eventSchema, serialiseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { improveDay, planDay } from '../../../shared/timeline';
import { compareWorth } from '../../../shared/timeline/day-worth';
import { dayEvent, inputsOf, type TestDay } from './make-day';
import { faultsOf } from './check-day';

const demo = (name: string): Event => eventSchema.parse(JSON.parse(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8')));

const place = (t: { readonly id: string; readonly start: number; readonly who: readonly string[] }): string => `${t.id} ${t.start} ${t.who.join(' ')}`;

test('what is undone decides before all else, then fairness, then the evening, then how long work stands', () => {
  const worth = { undone: 0, unfair: 10, lateEvening: 5, standing: 100 };
  expect(compareWorth(worth, worth)).toBe(0);
  expect(compareWorth({ ...worth, undone: 1 }, { ...worth, unfair: 90, lateEvening: 900, standing: 9000 })).toBeGreaterThan(0);
  expect(compareWorth({ ...worth, unfair: 9 }, { ...worth, lateEvening: 0, standing: 0 })).toBeLessThan(0);
  expect(compareWorth({ ...worth, lateEvening: 4 }, { ...worth, standing: 0 })).toBeLessThan(0);
  expect(compareWorth({ ...worth, standing: 101 }, worth)).toBe(1);
});

describe.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'])('%s', (name) => {
  let event: Event;
  let inputs: ReturnType<typeof plan>;
  beforeAll(() => { event = demo(name); inputs = plan(event); });

  test('is offered only when strictly better, stands before the independent reader, and tells what moves', () => {
    const better = improveDay({ event, inputs }, 7, 25);
    const day = planDay(event, inputs);
    // Without an offer the day at once stands for it, and nothing moves.
    const [after, moves] = [better?.day ?? day, better?.moves ?? []];
    expect(better === null ? -1 : compareWorth(better.after, better.before)).toBeLessThan(0);
    expect(faultsOf(event, after)).toEqual([]);
    expect(moves.length > 0).toBe(better !== null);
    expect(after.overloads.length).toBeLessThanOrEqual(day.overloads.length);
    const known = new Set(day.tasks.map(place));
    expect(moves.map((m) => m.task).toSorted()).toEqual(after.tasks.filter((t) => !known.has(place(t))).map((t) => t.id).toSorted());
  });
  test('the same start number finds the same day', () => {
    const [a, b] = [improveDay({ event, inputs }, 3, 12), improveDay({ event, inputs }, 3, 12)];
    expect(a?.after).toEqual(b?.after);
    expect(a?.moves).toEqual(b?.moves);
  });
});

test('a day whose first order leaves work standing is made better', () => {
  const day: TestDay = {
    people: [{ id: 'ann', roles: ['cook'], from: 300, to: 1300 }, { id: 'bo', roles: ['cook'], from: 300, to: 1300 }], burners: 1,
    dishes: Array.from({ length: 6 }, (_, i) => ({ id: `d${i}`, at: 720, steps: [{ id: 'cook', active: 20 + 7 * i, needs: i % 2 === 0 ? [{ thing: 'burner', count: 1 }] : [] }] })),
  };
  const event = dayEvent(day);
  const better = improveDay({ event, inputs: inputsOf(day, event) }, 1, 60);
  expect(better).not.toBeNull();
  expect(compareWorth(better!.after, better!.before)).toBeLessThan(0);
  expect(faultsOf(event, better!.day)).toEqual([]);
});

test('the order that was found, kept in the event, gives the very day that was offered, and nothing better is found by the same look', () => {
  const event = demo('school-fair-stall');
  const inputs = plan(event);
  const better = improveDay({ event, inputs }, 7, 25);
  if (better === null) throw new Error('the demo has a better day');
  const taken = takeDayOrder(event, better.order);
  if ('problem' in taken) throw new Error(taken.problem.id);
  // Workings are functions: the written form tells days apart.
  expect(JSON.stringify(planDay(taken.event, inputs))).toBe(JSON.stringify(better.day));
  const again = improveDay({ event: taken.event, inputs }, 7, 25);
  expect(again === null || compareWorth(again.after, better.after) < 0).toBe(true);
  const back = takeDayOrder(taken.event, null);
  expect('event' in back && serialiseEvent(back.event)).toBe(serialiseEvent(event));
});

test('an order that leaves more undone than the plain ones is not followed', () => {
  const day: TestDay = {
    people: [{ id: 'ann', roles: ['cook'], from: 300, to: 1300 }], burners: 1,
    dishes: Array.from({ length: 4 }, (_, i) => ({ id: `d${i}`, at: 720, steps: [{ id: 'cook', active: 30 }] })),
  };
  const event = dayEvent(day);
  const inputs = inputsOf(day, event);
  const plain = planDay(event, inputs);
  for (const relief of ['none', 'early', 'late'] as const) {
    const ordered: Event = { ...event, dayJobs: { ownJobs: [], changes: [], order: { setUpFirst: true, restsFirst: true, relief, nudges: plain.tasks.map((t, k) => ({ job: t.id, by: k % 2 === 0 ? -900 : 900 })) } } };
    expect(planDay(ordered, inputs).overloads.length).toBeLessThanOrEqual(plain.overloads.length);
  }
});

test('with nothing to do there is nothing better', () => {
  const event = dayEvent({ people: [] });
  expect(improveDay({ event, inputs: inputsOf({ people: [] }, event) }, 1, 10)).toBeNull();
});
