import { horizonOf } from './network';
import type { Contradiction, ScheduleProblem } from './types';
import { windowsOf } from './windows';

/** When each activity may run without the whole taking longer, by the rules alone. Unit: minutes. */
export interface CriticalPath {
  readonly kind: 'path';
  /** Length of the whole. */
  readonly makespan: number;
  readonly earliestStart: Int32Array;
  readonly latestStart: Int32Array;
  /** Latest less earliest start. */
  readonly slack: Int32Array;
  /** Activities with no slack, rising. */
  readonly critical: readonly number[];
}

/** The critical-path method over minimal and maximal lags; things are not looked at. Source: Kelley and Walker 1959 (from memory). */
export function criticalPath(problem: ScheduleProblem): CriticalPath | Contradiction {
  const ahead = windowsOf(problem, horizonOf(problem));
  if (ahead.kind === 'contradiction') return ahead;
  const makespan = problem.durations.reduce((most, minutes, i) => Math.max(most, (ahead.earliestStart[i] ?? 0) + minutes), 0);
  const within = windowsOf(problem, makespan);
  if (within.kind === 'contradiction') return within;
  const { earliestStart, latestStart } = within;
  const slack = latestStart.map((late, i) => late - (earliestStart[i] ?? 0));
  return { kind: 'path', makespan, earliestStart, latestStart, slack, critical: [...slack.keys()].filter((i) => slack[i] === 0) };
}
