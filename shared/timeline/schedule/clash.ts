import { searchWithMaximalLags } from './maximal-lags';
import type { ScheduleProblem } from './types';

/** Facts that cannot all hold: these activities within their windows and rules, with no more of these things than there is. */
export interface Clash {
  /** Numbers of activities, rising. */
  readonly activities: readonly number[];
  /** Numbers of things that run short; none when the rules alone contradict each other. */
  readonly things: readonly number[];
}

/** A problem with some of its activities and things only; rules between those that are left stay. */
export function restricted(problem: ScheduleProblem, activities: readonly number[], things: readonly number[]): ScheduleProblem {
  const place = new Map(activities.map((i, at) => [i, at]));
  const some = <T>(list: readonly T[]): T[] => activities.flatMap((i) => (list[i] === undefined ? [] : [list[i]]));
  return {
    durations: some(problem.durations),
    demands: some(problem.demands).map((row) => things.map((k) => row[k] ?? 0)),
    capacities: things.map((k) => problem.capacities[k] ?? 0),
    lags: problem.lags.flatMap(({ from, to, least }) => {
      const [a, b] = [place.get(from), place.get(to)];
      return a === undefined || b === undefined ? [] : [{ from: a, to: b, least }];
    }),
    ...(problem.earliest === undefined ? {} : { earliest: some(problem.earliest) }),
    ...(problem.latest === undefined ? {} : { latest: some(problem.latest) }),
  };
}

/**
 * Why nothing can be scheduled: a set of facts that clash, of which none can be left out; null when there is a schedule, or when the steps
 * do not suffice to tell. Facts are left out one by one, the last first, and stay out when the rest still clashes.
 * @param most steps for each question whether a set clashes.
 * Source: deletion filter for an irreducible infeasible subset, Chinneck and Dravnieks 1991 (from memory).
 */
export function clashOf(problem: ScheduleProblem, most: number): Clash | null {
  const clashes = (activities: readonly number[], things: readonly number[]): boolean => searchWithMaximalLags(restricted(problem, activities, things), most, true).kind === 'impossible';
  let activities = problem.durations.map((_, i) => i);
  let things = problem.capacities.map((_, k) => k);
  if (!clashes(activities, things)) return null;
  for (const k of things.toReversed()) {
    const rest = things.filter((x) => x !== k);
    if (clashes(activities, rest)) things = rest;
  }
  for (const i of activities.toReversed()) {
    const rest = activities.filter((x) => x !== i);
    if (clashes(rest, things)) activities = rest;
  }
  return { activities, things };
}
