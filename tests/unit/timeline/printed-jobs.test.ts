import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { eventSchema, formatsFor, type Event } from '../../../shared/event';
import { improveDay, planDay, type TimelinePlan } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';
import { anyDay } from './random-days';

const kitchen: TestDay = {
  people: [{ id: 'ana', roles: ['cook'], from: 420, to: 1200 }, { id: 'ben', roles: ['runner'], from: 420, to: 1200 }],
  dishes: [{ id: 'rice', at: 780, steps: [{ id: 'wash', active: 10 }, { id: 'boil', active: 5, passive: 30, needs: [{ thing: 'pot', count: 1 }], after: ['wash'] }] }, { id: 'soup', at: 780, steps: [{ id: 'cut', active: 30 }] }],
};
const withChanges = (d: TestDay, changes: readonly unknown[]): Event => eventSchema.parse({ ...dayEvent(d), dayJobs: { changes } });
const planned = (d: TestDay, changes: readonly unknown[] = []): { day: TimelinePlan; event: Event } => { const event = withChanges(d, changes); return { event, day: planDay(event, inputsOf(d, event)) }; };
const start = (day: TimelinePlan, job: string) => day.tasks.find((t) => t.job === job)?.start;
const letGo = (day: TimelinePlan) => day.notes.filter((m) => m.id === 'timeline.note.letGo');

test('a printed job stays at its minute where it can', () => {
  const { day } = planned(kitchen, [{ job: 'step/cut/soup', at: 600, held: 'printed' }]);
  expect(start(day, 'step/cut/soup')).toBe(600);
  expect(day.tasks.find((t) => t.job === 'step/cut/soup')?.held).toBe('printed');
  expect([letGo(day), day.overloads]).toEqual([[], []]);
});
test('one that cannot stay there is placed where it can be done, and the day says so and why', () => {
  const alone = { ...kitchen, people: kitchen.people.slice(0, 1) };
  const { day, event } = planned(alone, [{ job: 'step/cut/soup', at: 600, held: 'printed' }, { job: 'step/wash/rice', at: 605, held: 'started' }]);
  expect(start(day, 'step/wash/rice')).toBe(605);
  expect(start(day, 'step/cut/soup')).not.toBe(600);
  expect(day.overloads).toEqual([]);
  expect(letGo(day)).toHaveLength(1);
  expect(sayMessage(formatsFor(event.preferences, event.day), letGo(day)[0]!)).toMatch(/^Cannot stay as printed, soup: cut: it is now at 12:\d\d\. .*rice: wash/);
  expect(faultsOf(event, day)).toEqual([]);
});
test('one printed before what it waits for is done moves; what the cook pinned by hand stays even so', () => {
  const printed = planned(kitchen, [{ job: 'step/wash/rice', at: 650, held: 'pinned' }, { job: 'step/boil/rice', at: 645, held: 'printed' }]).day;
  expect(start(printed, 'step/boil/rice')).toBeGreaterThanOrEqual(660);
  expect(letGo(printed)).toHaveLength(1);
  const pinned = planned(kitchen, [{ job: 'step/wash/rice', at: 650, held: 'pinned' }, { job: 'step/boil/rice', at: 645, held: 'pinned' }]).day;
  expect(start(pinned, 'step/boil/rice')).toBe(645);
  expect(pinned.overloads.map((o) => o.message.id)).toContain('timeline.pin.before');
});
test('a longer look leaves printed jobs where they are', () => {
  const event = withChanges(kitchen, [{ job: 'step/cut/soup', at: 500, held: 'printed' }]);
  const better = improveDay({ event, inputs: inputsOf(kitchen, event) }, 3, 20);
  expect(better === null ? 500 : start(better.day, 'step/cut/soup')).toBe(500);
});
test('any day printed whole, then with a helper less: each job stays, or the day says that it could not', () => {
  fc.assert(fc.property(anyDay, (d) => {
    const before = planned(d).day;
    const held = [...new Map(before.tasks.filter((t) => ['step', 'setUp', 'clean', 'serve'].includes(t.kind) && t.job !== undefined).toReversed().map((t) => [t.job, t])).values()].filter((t) => Number.isInteger(t.start)).map((t) => ({ job: t.job, at: t.start, held: 'printed' }));
    const { day, event } = planned({ ...d, people: d.people.slice(0, -1) }, held);
    expect(faultsOf(event, day)).toEqual([]);
    const told = letGo(day).length;
    const moved = held.filter((h) => { const at = start(day, h.job!); return at !== undefined && at !== h.at; });
    expect(told).toBe(moved.length);
    for (const h of held) {
      const t = day.tasks.find((x) => x.job === h.job);
      if (t !== undefined && t.start === h.at) continue;
      expect(t?.held).toBeUndefined();
    }
  }), { numRuns: 60, seed: 20261125, endOnFailure: true });
});
