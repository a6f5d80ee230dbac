import * as fc from 'fast-check';
import type { ScheduleProblem } from '../../../shared/timeline';

/** Random kitchens small enough to be gone through one by one: jobs on burners, hands and an oven, with windows, rests and holding limits. */
export const kitchens: fc.Arbitrary<ScheduleProblem> = fc.record({
  jobs: fc.array(fc.record({ minutes: fc.integer({ min: 1, max: 6 }), burners: fc.integer({ min: 0, max: 2 }), hands: fc.integer({ min: 0, max: 2 }), oven: fc.integer({ min: 0, max: 1 }), from: fc.integer({ min: 0, max: 8 }), room: fc.integer({ min: 0, max: 6 }) }), { minLength: 2, maxLength: 6 }),
  burners: fc.integer({ min: 1, max: 3 }), hands: fc.integer({ min: 1, max: 3 }),
  rules: fc.array(fc.record({ a: fc.nat(5), b: fc.nat(5), rest: fc.integer({ min: 0, max: 3 }), within: fc.option(fc.integer({ min: 0, max: 4 })) }), { maxLength: 4 }),
}).map(({ jobs, burners, hands, rules }) => ({
  durations: jobs.map((j) => j.minutes), demands: jobs.map((j) => [j.burners, j.hands, j.oven]), capacities: [burners, hands, 1],
  earliest: jobs.map((j) => j.from), latest: jobs.map((j) => j.from + j.minutes + j.room),
  lags: rules.flatMap(({ a, b, rest, within }) => {
    const [from, to] = [a % jobs.length, b % jobs.length];
    if (from >= to) return [];
    const least = jobs[from]!.minutes + rest;
    return [{ from, to, least }, ...(within === null ? [] : [{ from: to, to: from, least: -(least + within) }])];
  }),
}));

/** Whether any schedule exists, found by trying every start of every job: slow, and nothing of the scheduler's own code. */
export function anySchedule(problem: ScheduleProblem): boolean {
  const n = problem.durations.length;
  const starts: number[] = [];
  const fits = (i: number, at: number): boolean => {
    for (const { from, to, least } of problem.lags) {
      if (from === i && to < i && starts[to]! < at + least) return false;
      if (to === i && from < i && at < starts[from]! + least) return false;
      if (from === i && to === i && least > 0) return false;
    }
    for (let t = at; t < at + problem.durations[i]!; t += 1) {
      for (const [k, capacity] of problem.capacities.entries()) {
        let sum = problem.demands[i]![k]!;
        for (let j = 0; j < i; j += 1) if (starts[j]! <= t && t < starts[j]! + problem.durations[j]!) sum += problem.demands[j]![k]!;
        if (sum > capacity) return false;
      }
    }
    return true;
  };
  const from = (i: number): boolean => {
    if (i === n) return true;
    for (let at = problem.earliest![i]!; at + problem.durations[i]! <= problem.latest![i]!; at += 1) {
      if (!fits(i, at)) continue;
      starts[i] = at;
      if (from(i + 1)) return true;
    }
    return false;
  };
  return from(0);
}
