import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plan } from '../../../shared/plan';
import { planDay, type Task, type TimelinePlan } from '../../../shared/timeline';
import { fixedJob, type Placed } from '../../../shared/timeline/job';
import { resourcesOf } from '../../../shared/timeline/resources';
import { slacksOf } from '../../../shared/timeline/slack';
import { minutes } from '../../../shared/measure';
import { demo, demoNames } from '../demo/demo';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const name = { id: 'timeline.task.serve' } as const;
/** A job placed at `start`, which may end at `latest`. */
const placed = (id: string, start: number, length: number, after: readonly string[], latest: number, who: string | null = null, things: readonly string[] = []): Placed => ({
  job: { ...fixedJob({ id, kind: 'step', roles: [], about: {}, name, start, end: start + length, attention: who === null ? 0 : 1, needs: things.map((thing) => ({ thing, count: 1 })), after }), latest },
  start, who, things: true, tooEarly: 0, home: false,
});
const people = ['ana', 'ben'].map((id) => ({ id, roles: ['cook'], from: 0, to: 200 }));
const resources = () => resourcesOf(dayEvent({ people, burners: 1 }));
const slacks = (list: readonly Placed[]) => Object.fromEntries(slacksOf(resources(), list).map((s, i) => [list[i]!.job.id, s]));

describe('slack by the critical-path method', () => {
  // Activities, durations and predecessors of an exercise printed in open course notes on network construction (14 activities, longest
  // path A-B-F-I-K-L-N = 41). The notes give the other paths as 35, 30, 39 and 38; floats below are 41 less the longest path through each.
  const network: readonly (readonly [string, number, string])[] = [
    ['A', 2, ''], ['B', 10, 'A'], ['C', 13, 'A'], ['D', 12, 'A'], ['E', 12, 'B'], ['F', 7, 'B'], ['G', 10, 'D'], ['H', 16, 'D'], ['I', 6, 'F'], ['J', 12, 'CG'], ['K', 5, 'I'], ['L', 8, 'EK'], ['M', 5, 'H'], ['N', 3, 'JLM'],
  ];
  test('agrees with a published network of 14 activities and 41 days', () => {
    const ends = new Map<string, number>();
    const list = network.map(([id, length, after]) => {
      const start = Math.max(0, ...after.split('').map((a) => ends.get(a)!));
      ends.set(id, start + length);
      return placed(id, start, length, after.split(''), 41);
    });
    expect(ends.get('N')).toBe(41);
    expect(slacks(list)).toEqual({ A: 0, B: 0, F: 0, I: 0, K: 0, L: 0, N: 0, C: 11, D: 2, G: 2, J: 2, H: 3, M: 3, E: 6 });
  });
  test('a follower moves on within its own window, not further', () => {
    // b may end at 50, so it may begin at 40; a must be done by then.
    expect(slacks([placed('a', 0, 10, [], 100), placed('b', 10, 10, ['a'], 50)])).toEqual({ a: 30, b: 30 });
    expect(slacks([placed('a', 0, 10, [], 35), placed('b', 10, 10, ['a'], 50)])).toEqual({ a: 25, b: 30 });
  });
  test('one after the other on the same person they move together; on different people each by itself', () => {
    expect(slacks([placed('a', 0, 10, [], 100, 'ana'), placed('b', 10, 10, [], 50, 'ana')])).toEqual({ a: 30, b: 30 });
    expect(slacks([placed('a', 0, 10, [], 100, 'ana'), placed('b', 10, 10, [], 50, 'ben')])).toEqual({ a: 90, b: 30 });
  });
  test('one after the other on the only burner as well', () => {
    expect(slacks([placed('a', 0, 10, [], 100, null, ['burner']), placed('b', 10, 10, [], 50, null, ['burner'])])).toEqual({ a: 30, b: 30 });
  });
  test('a person\u2019s hours end it', () => expect(slacks([placed('a', 0, 10, [], 500, 'ana')])).toEqual({ a: 190 }));
  test('at the hot oil nothing moves, and what stands before it moves only up to it', () => {
    const watch = placed('w', 30, 40, [], 200, 'ana');
    expect(slacks([placed('a', 0, 10, [], 100, 'ana'), { ...watch, job: { ...watch.job, kind: 'watchOil' } }])).toEqual({ a: 20, w: 0 });
  });
});

/** The day with every job begun as late as its slack says, all at once. */
const atTheirLatest = (day: TimelinePlan): TimelinePlan => ({ ...day, tasks: day.tasks.map((t): Task => ({ ...t, start: minutes(t.start + t.slack), end: minutes(t.end + t.slack) })) });

const step = fc.record({ active: fc.integer({ min: 0, max: 60 }), passive: fc.integer({ min: 0, max: 60 }), share: fc.constantFrom(0, 0.2), thing: fc.constantFrom('burner', 'pot', 'counter', 'none'), after: fc.array(fc.nat(3), { maxLength: 2 }), latest: fc.integer({ min: 0, max: 60 }), width: fc.integer({ min: 60, max: 400 }) });
const days = fc.record({ dishes: fc.array(fc.record({ at: fc.integer({ min: 720, max: 1000 }), steps: fc.array(step, { maxLength: 4 }) }), { minLength: 1, maxLength: 5 }), rounds: fc.array(fc.integer({ min: 620, max: 900 }), { maxLength: 3 }), helpers: fc.integer({ min: 1, max: 4 }) }).map((d): TestDay => ({
  people: Array.from({ length: d.helpers }, (_, i) => ({ id: `h${i}`, roles: [['cook', 'tea', 'runner'][i % 3]!], from: 420, to: 1200 })),
  dishes: d.dishes.map((x, i) => ({
    id: `d${i}`, at: x.at, steps: x.steps.map((s, k) => ({
      id: `s${k}`, active: s.active, passive: s.passive, passiveAttention: s.share, needs: s.thing === 'none' ? [] : [{ thing: s.thing, count: 1 }],
      after: [...new Set(s.after.filter((a) => a < k).map((a) => `s${a}`))], endsBefore: { earliest: s.latest + s.width, latest: s.latest },
    })),
  })),
  rounds: d.rounds.map((startAt) => ({ startAt, readyAt: startAt + 35 })),
}));

describe('with every job at its latest at once', () => {
  test('nobody and nothing is over-booked and the order is kept, for 150 random days', () => {
    fc.assert(fc.property(days, (d) => {
      const event = dayEvent(d);
      const day = planDay(event, inputsOf(d, event));
      expect(faultsOf(event, day)).toEqual([]);
      expect(faultsOf(event, atTheirLatest(day))).toEqual([]);
    }), { numRuns: 150 });
  });
  test.each(demoNames)('the same holds for %s, and some of its jobs can slip', (demoName) => {
    const event = demo(demoName);
    const { day } = plan(event);
    expect(faultsOf(event, atTheirLatest(day))).toEqual([]);
    const steps = day.tasks.filter((t) => t.kind === 'step');
    expect(steps.filter((t) => t.slack > 0).length).toBeGreaterThan(steps.length / 2);
  });
});
