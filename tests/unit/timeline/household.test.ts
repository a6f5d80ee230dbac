import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plan } from '../../../shared/plan';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { demo, demoNames } from '../demo/demo';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const planOf = (d: TestDay): TimelinePlan => { const event = dayEvent(d); return planDay(event, inputsOf(d, event)); };
const crew = [
  { id: 'ben', roles: ['fryer'], from: 600, to: 1200 }, { id: 'ana', roles: ['cook'], from: 480, to: 1200 }, { id: 'cy', roles: ['tea'], from: 600, to: 1200 },
];
const fried: TestDay = {
  people: crew, dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }],
  stations: [{ on: 700, ready: 715, off: 800, drops: [720], cycle: 5 }, { on: 700, ready: 715, off: 800, drops: [722], cycle: 5 }],
};
/** Tasks that need somebody, have nobody, and are named by no overload. */
const forgotten = (day: TimelinePlan): string[] => {
  const named = new Set(day.overloads.flatMap((o) => [o.task, ...o.also]));
  return day.tasks.filter((t) => t.attention > 0 && t.who.length === 0 && !named.has(t.id)).map((t) => t.id);
};
const hour = fc.integer({ min: 400, max: 1300 });
const days = fc.record({
  people: fc.array(fc.record({ roles: fc.subarray(['cook', 'fryer', 'tea', 'runner'], { minLength: 1 }), from: hour, to: hour }), { maxLength: 4 }),
  rounds: fc.array(fc.record({ startAt: hour, length: fc.integer({ min: 0, max: 60 }) }), { maxLength: 5 }), drops: fc.array(fc.integer({ min: 716, max: 780 }), { maxLength: 4 }), active: fc.integer({ min: 0, max: 300 }),
}).map((d): TestDay => ({
  people: d.people.map((p, i) => ({ id: `p${i}`, roles: p.roles, from: Math.min(p.from, p.to), to: Math.max(p.from, p.to) })),
  dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }, { id: 'rice', at: 780, steps: [{ id: 'wash', active: d.active }, { id: 'boil', active: 5, passive: 20, passiveAttention: 0.2, after: ['wash'] }] }],
  stations: [{ on: 700, ready: 715, off: 800, drops: d.drops, cycle: 5 }], rounds: d.rounds.map((r) => ({ startAt: r.startAt, readyAt: r.startAt + r.length })), fills: d.rounds.map((r) => ({ at: r.startAt + r.length, trips: 1 })),
}));

describe('work outside the hours of the day', () => {
  test('is given to the household, the first cook of the list, one thing after the other', () => {
    const day = planOf(fried);
    const away = day.tasks.filter((t) => t.kind === 'oilAway');
    expect(away.map((t) => [t.start, t.end, t.who, t.note?.id])).toEqual([[1520, 1540, ['ana'], 'timeline.note.household'], [1540, 1560, ['ana'], 'timeline.note.household']]);
    expect(day.overloads).toEqual([]);
  });
  test('is given to the first of the list when nobody cooks', () => {
    expect(planOf({ ...fried, people: crew.filter((p) => p.id !== 'ana') }).tasks.filter((t) => t.kind === 'oilAway').map((t) => t.who)).toEqual([['ben'], ['ben']]);
  });
  test('is given to whoever is there when it lies within the hours, without a note', () => {
    const [first] = planOf({ ...fried, people: [...crew, { id: 'fay', roles: ['fryer'], from: 600, to: 1700 }] }).tasks.filter((t) => t.kind === 'oilAway');
    expect(first).toMatchObject({ who: ['fay'], start: 1520 });
    expect(first!.note).toBeUndefined();
  });
  test('without anybody in the list is named with the rest', () => {
    const day = planOf({ ...fried, people: [] });
    expect(day.overloads[0]!.message.id).toBe('timeline.overload.noHelpers');
    expect(day.overloads[0]!.also).toEqual(expect.arrayContaining(['oil-away/pan0', 'oil-away/pan1']));
  });
});

describe('every task that needs somebody', () => {
  test('has somebody, or an overload names it', () => {
    fc.assert(fc.property(days, (d) => { expect(forgotten(planOf(d))).toEqual([]); }), { numRuns: 150 });
  });
  test.each(demoNames)('has somebody in %s', (name) => {
    expect(plan(demo(name)).day.tasks.filter((t) => t.attention > 0 && t.who.length === 0)).toEqual([]);
  });
  test('of the household is never two things at once', () => {
    for (const name of demoNames) {
      const home = plan(demo(name)).day.tasks.filter((t) => t.kind === 'shop' || t.kind === 'oilAway').toSorted((a, b) => a.start - b.start);
      home.forEach((t, i) => { expect(home[i + 1]?.start ?? t.end).toBeGreaterThanOrEqual(t.end); });
    }
  });
});

describe('times', () => {
  test('are whole minutes when the plans they come from are', () => {
    fc.assert(fc.property(days, (d) => {
      expect(planOf(d).tasks.filter((t) => t.start % 1 !== 0 || t.end % 1 !== 0).map((t) => t.id)).toEqual([]);
    }), { numRuns: 80 });
  });
  test.each(demoNames)('are whole minutes in %s, and every fill starts at the minute of the drinks plan', (name) => {
    const p = plan(demo(name));
    expect(p.day.tasks.filter((t) => t.start % 1 !== 0 || t.end % 1 !== 0).map((t) => t.id)).toEqual([]);
    const fills = p.day.tasks.filter((t) => t.kind === 'fill');
    expect(fills.map((t) => t.start).toSorted((a, b) => a - b)).toEqual(p.drinks.fills.map((f) => f.at).toSorted((a, b) => a - b));
    for (const r of p.drinks.rounds) {
      const done = Math.max(...p.day.tasks.filter((t) => t.kind === 'brew' && t.round === r.number).map((t) => t.end));
      expect(done).toBeLessThanOrEqual(p.drinks.fills.find((f) => f.round === r.number)!.at);
    }
  });
  test('hold for a step of two days of work: cut into parts, none forgotten', () => {
    const day = planOf({ people: crew, dishes: [{ id: 'rice', at: 780, steps: [{ id: 'sort', active: 2880 }] }] });
    expect(day.tasks.filter((t) => t.kind === 'step').reduce((n, t) => n + t.end - t.start, 0)).toBe(2880);
    expect(forgotten(day)).toEqual([]);
  });
});
