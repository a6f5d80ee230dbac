import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor, parseEvent, type Event } from '../../../shared/event';
import { dayRemedies, plan, remediesOf } from '../../../shared/plan';
import { withRemedy, type RemedyNames } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { faultsOf } from '../timeline/check-day';

const demo: Event = eventSchema.parse(JSON.parse(readFileSync('assets/app/demo/school-fair-stall.brimful', 'utf8')));
const names: RemedyNames = { helper: 'One more', ring: 'Ring', urn: 'Urn', pot: 'Pot' };
const short: Event = { ...demo, people: demo.people.slice(0, -1) };
const narrow: Event = { ...demo, kitchen: { ...demo.kitchen, counterPlaces: 1 } };
const tasksOf = (o: { readonly task: string; readonly also: readonly string[] }): readonly string[] => [o.task, ...o.also];

describe('ways out of a clash', () => {
  test('a day that works has none', () => {
    expect(dayRemedies(demo)).toEqual([]);
  });
  for (const [name, event] of [['a helper too few', short], ['one counter place', narrow]] as const) test(`${name}: each way out, made and planned as a whole, ends its clash and makes no other`, () => {
    const before = plan(event);
    expect(before.day.overloads.length).toBeGreaterThan(0);
    const clash = before.day.overloads[0]!;
    const found = remediesOf(event, before, clash);
    expect(found.remedies.length).toBeGreaterThan(0);
    expect(found.remedies.length).toBeLessThanOrEqual(3);
    const known = new Set(before.day.overloads.flatMap(tasksOf));
    for (const remedy of found.remedies) {
      const changed = withRemedy(event, remedy.change, names);
      expect(parseEvent(JSON.stringify(changed)).ok).toBe(true);
      const after = plan(changed);
      expect(faultsOf(changed, after.day)).toEqual([]);
      const left = new Set(after.day.overloads.flatMap(tasksOf));
      for (const t of tasksOf(clash)) expect(left.has(t), `${t} still clashes`).toBe(false);
      expect([...left].filter((t) => !known.has(t))).toEqual([]);
      for (const t of remedy.alsoEnds) expect(left.has(t)).toBe(false);
      expect(remedy.cost.lateMinutes).toBe(0);
      expect(sayMessage(formatsFor(event.preferences, event.day), remedy.message)).toMatch(/^(Start|Ask|Borrow|Leave) .*\.$/);
    }
    expect(new Set(found.remedies.map((r) => r.change.kind)).size).toBe(found.remedies.length);
  });
  test('where the counter is too small a folding table is offered', () => {
    const before = plan(narrow);
    const found = remediesOf(narrow, before, before.day.overloads[0]!);
    expect(found.remedies.map((r) => r.change)).toContainEqual({ kind: 'borrow', thing: 'counter' });
  });
  test('her own job that stands in the way is moved before anything else', () => {
    const ownJobs = [{ id: 'cut', name: 'Cut the cake', minutes: 5, from: 590, to: 596, needs: [{ thing: 'counter', count: 1 }] }];
    const event = { ...narrow, dayJobs: { ownJobs, changes: [] } };
    const before = plan(event);
    const clash = before.day.overloads.find((o) => o.task === 'own/cut');
    const [first] = remediesOf(event, before, clash!).remedies;
    expect(first?.change).toMatchObject({ kind: 'move', job: 'own/cut', own: true });
    expect(first!.cost.movedMinutes).toBeGreaterThan(0);
    expect(plan(withRemedy(event, first!.change, names)).day.overloads.map((o) => o.task)).not.toContain('own/cut');
  });
});

describe('a change made', () => {
  test('never touches the event it is made in', () => {
    const text = JSON.stringify(demo);
    const changes = [{ kind: 'borrow', thing: 'ring' }, { kind: 'borrow', thing: 'urn' }, { kind: 'borrow', thing: 'pot' }, { kind: 'borrow', thing: 'oven' }, { kind: 'borrow', thing: 'counter' },
      { kind: 'drop', dish: demo.menu.dishes[0]!.id }, { kind: 'hours', person: demo.people[0]!.id, from: 300, to: 1300 }, { kind: 'helper', roles: ['runner'], from: 600, to: 700 }, { kind: 'move', job: 'set-up/tables', at: 500, own: false }] as const;
    for (const change of changes) {
      const changed = withRemedy(demo, change, names);
      expect(JSON.stringify(changed)).not.toBe(text);
      expect(parseEvent(JSON.stringify(changed)).ok).toBe(true);
    }
    expect(JSON.stringify(demo)).toBe(text);
  });
  test('a second borrowed thing has an id of its own', () => {
    const twice = withRemedy(withRemedy(demo, { kind: 'borrow', thing: 'ring' }, names), { kind: 'borrow', thing: 'ring' }, names);
    expect(new Set(twice.kitchen.burners.map((b) => b.id)).size).toBe(twice.kitchen.burners.length);
  });
});
