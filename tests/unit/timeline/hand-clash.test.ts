import { expect, test } from 'vitest';
import * as fc from 'fast-check';
import { formatsFor } from '../../../shared/event';
import { planDay } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { dayHolds } from './clash-holds';
import { dayEvent, inputsOf, type TestDay } from './make-day';
import { anyDay } from './random-days';

const folding = (id: string) => ({ id, at: 760, steps: [{ id: 'fold', active: 30, endsBefore: { earliest: 2, latest: 0 } }] });
const person = (id: string, from = 400, to = 1400) => ({ id, roles: ['cook'], from, to });

function dayWith(dishes: readonly string[], people: TestDay['people']) {
  const day: TestDay = { people, dishes: dishes.map(folding) };
  const event = dayEvent(day);
  return { plan: planDay(event, inputsOf(day, event)), formats: formatsFor(event.preferences, event.day) };
}
const clashes = (plan: ReturnType<typeof dayWith>['plan']) => plan.overloads.flatMap((o) => (o.clash?.message.id === 'timeline.clash.hands' ? [o.clash] : []));

test('three jobs want hands at once and there are two helpers: all three are named, with the minutes and the helpers', () => {
  const { plan, formats } = dayWith(['rice', 'beans', 'bread'], [person('ann'), person('bo')]);
  const [clash] = clashes(plan);
  expect(clash?.tasks.map((t) => t.split('/')[2]).toSorted()).toEqual(['beans', 'bread', 'rice']);
  expect(sayMessage(formats, clash!.message)).toBe("Between 12:08 and 12:40 3 jobs stand in each other's way and there are 2 helpers: rice: fold, beans: fold and bread: fold.");
});
test('with one job less, or one helper more, there is no clash', () => {
  expect(dayWith(['rice', 'beans'], [person('ann'), person('bo')]).plan.overloads).toEqual([]);
  expect(dayWith(['rice', 'beans', 'bread'], [person('ann'), person('bo'), person('cy')]).plan.overloads).toEqual([]);
});
test('who comes only later is named', () => {
  const { plan, formats } = dayWith(['rice', 'beans'], [person('ann'), person('bo', 740)]);
  const [clash] = clashes(plan);
  expect(clash?.tasks).toHaveLength(2);
  expect(sayMessage(formats, clash!.message)).toContain('there are 2 helpers (not all the time: bo)');
});
test('40 random kitchens: an independent reader accepts each plan, and each named clash is true with nothing too much (2,000 in the long run)', () => {
  const count = { clashes: 0, named: 0 };
  fc.assert(fc.property(anyDay, (d) => {
    const found = dayHolds(d);
    count.clashes += found.clashes;
    count.named += found.named;
  }), { numRuns: 40, seed: 20261125, endOnFailure: true });
  expect(count.named).toBeGreaterThan(20);
});
