import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clashOf, firstAnswer, lowerBound, search, searchWithMaximalLags, horizonOf, windowsOf, type ScheduleProblem } from '../../../shared/timeline';
import { FirstOf } from '../../../shared/timeline/first-of';
import { scheduleFaults } from '../../bench/check-schedule';
import { kitchenHolds } from './schedule-kitchens';
import { kitchens } from './schedule-random';

const after = (problem: Omit<ScheduleProblem, 'lags'>, pairs: readonly (readonly [number, number])[]): ScheduleProblem => ({ ...problem, lags: pairs.map(([from, to]) => ({ from, to, least: problem.durations[from]! })) });

/** Random networks without maximal lags; start-to-start lags may be shorter than the job itself. */
const networks: fc.Arbitrary<ScheduleProblem> = fc.record({
  jobs: fc.array(fc.record({ minutes: fc.integer({ min: 0, max: 9 }), a: fc.integer({ min: 0, max: 3 }), b: fc.integer({ min: 0, max: 2 }), from: fc.integer({ min: 0, max: 5 }) }), { minLength: 1, maxLength: 14 }),
  pairs: fc.array(fc.tuple(fc.nat(13), fc.nat(13), fc.integer({ min: -4, max: 4 })), { maxLength: 14 }), released: fc.boolean(),
}).map(({ jobs, pairs, released }) => ({
  durations: jobs.map((j) => j.minutes), demands: jobs.map((j) => [j.a, j.b]), capacities: [3, 2],
  ...(released ? { earliest: jobs.map((j) => j.from) } : {}),
  lags: pairs.flatMap(([a, b, extra]) => (a < b && b < jobs.length ? [{ from: a, to: b, least: Math.max(0, jobs[a]!.minutes + extra) }] : [])),
}));

describe('schedules of random networks', () => {
  test('an independent checker accepts every one, in both directions of time, with start-to-start lags and earliest starts', () => {
    fc.assert(fc.property(networks, fc.integer(), (problem, start) => {
      const windows = windowsOf(problem, horizonOf(problem));
      if (windows.kind === 'contradiction') throw new Error('no circle here');
      const first = firstAnswer(problem, 1);
      const third = firstAnswer(problem);
      const found = search(problem, start, 120);
      for (const s of [first, third, found]) expect(scheduleFaults(problem, s.starts, s.makespan)).toEqual([]);
      expect(third.makespan).toBeLessThanOrEqual(first.makespan);
      expect(found.makespan).toBeLessThanOrEqual(third.makespan);
      expect(found.makespan).toBeGreaterThanOrEqual(lowerBound(problem, windows));
      expect(found.schedules).toBeLessThanOrEqual(120);
      expect([...search(problem, start, 120).starts]).toEqual([...found.starts]);
    }), { numRuns: 150 });
  });
  test('the exact search is never longer, and proves the search right where that reaches it', () => {
    fc.assert(fc.property(networks.filter((p) => p.durations.length <= 7), (problem) => {
      const exact = searchWithMaximalLags(problem, 20_000);
      if (exact.kind !== 'found') throw new Error(exact.kind);
      expect(scheduleFaults(problem, exact.starts, exact.makespan)).toEqual([]);
      const found = search(problem, 1, 300);
      expect(found.makespan).toBeGreaterThanOrEqual(exact.optimal ? exact.makespan : 0);
    }), { numRuns: 60 });
  });
});

describe('by hand', () => {
  // One cook. Chop 3, boil 4 (burner, nobody), fry 2, plate 1; plate waits for all: the cook chops, fries, then plates; boiling beside it.
  const supper = after({ durations: [3, 4, 2, 1], demands: [[1, 0], [0, 1], [1, 1], [1, 0]], capacities: [1, 1] }, [[0, 3], [1, 3], [2, 3]]);
  test('supper takes 7 minutes: boiling and frying share the burner', () => {
    const found = search(supper, 1, 50);
    expect(found.makespan).toBe(7);
    expect(searchWithMaximalLags(supper, 1000)).toMatchObject({ kind: 'found', makespan: 7, optimal: true });
  });
  test('what is better is told with the count of schedules, strictly shorter each time', () => {
    const told: [number, number][] = [];
    search(supper, 1, 50, (makespan, schedules) => told.push([makespan, schedules]));
    expect(told.length).toBeGreaterThan(0);
    expect(told.every(([makespan], k) => k === 0 || makespan < told[k - 1]![0])).toBe(true);
  });
  test('windows: the longest path from both ends; a circle is named with the minutes missing', () => {
    const chain = after({ durations: [2, 3, 4], demands: [[], [], []], capacities: [] }, [[0, 1], [1, 2]]);
    expect(windowsOf(chain, 12)).toEqual({ kind: 'windows', earliestStart: Int32Array.of(0, 2, 5), latestStart: Int32Array.of(3, 5, 8) });
    expect(windowsOf({ ...chain, latest: [12, 4, 12] }, 12)).toEqual({ kind: 'contradiction', activities: [0, 1], shortBy: 1 });
  });
  test('more than there is, and rules in a circle, are refused by the search that cannot take them', () => {
    expect(() => search({ durations: [1], demands: [[2]], capacities: [1], lags: [] }, 1, 10)).toThrow(RangeError);
    expect(() => search({ durations: [1, 1], demands: [[], []], capacities: [], lags: [{ from: 0, to: 1, least: 1 }, { from: 1, to: 0, least: -5 }] }, 1, 10)).toThrow(RangeError);
    expect(searchWithMaximalLags({ durations: [1], demands: [[2]], capacities: [1], lags: [] }, 10)).toEqual({ kind: 'impossible', steps: 0 });
  });
  test('three jobs want a burner at once and there are two: the set is those three and the burners, nothing else', () => {
    const clash = clashOf({
      durations: [30, 30, 30, 10], demands: [[1, 0], [1, 1], [1, 0], [0, 1]], capacities: [2, 3], lags: [],
      earliest: [730, 730, 730, 700], latest: [760, 765, 760, 800],
    }, 1000);
    expect(clash).toEqual({ activities: [0, 1, 2], things: [0] });
  });
  test('steps that do not suffice say so instead of guessing', () => {
    const many = { durations: Array.from({ length: 8 }, () => 3), demands: Array.from({ length: 8 }, () => [1]), capacities: [1], lags: [] };
    expect(searchWithMaximalLags(many, 1).kind).toBe('unknown');
  });
});

test('random kitchens: a plan that stands, or a named set that truly clashes', () => {
  let [done, impossible] = [0, 0];
  fc.assert(fc.property(kitchens, (problem) => { if (kitchenHolds(problem)) done += 1; else impossible += 1; }), { numRuns: 100 });
  expect(done).toBeGreaterThan(5);
  expect(impossible).toBeGreaterThan(5);
});

test('the heap gives back numbers in order', () => {
  fc.assert(fc.property(fc.uniqueArray(fc.nat(200)), (numbers) => {
    const heap = new FirstOf(numbers.length);
    for (const n of numbers) heap.add(n);
    const out = numbers.map(() => heap.take());
    expect(out).toEqual(numbers.toSorted((a, b) => a - b));
    expect(heap.take()).toBe(-1);
  }));
});
