import type { ScheduleProblem } from './types';
import type { Windows } from './types';

/** Minutes no schedule can beat: the longest path, or the work on one thing spread over all there is of it. */
export function lowerBound({ durations, demands, capacities }: ScheduleProblem, windows: Windows): number {
  const path = durations.reduce((most, minutes, i) => Math.max(most, (windows.earliestStart[i] ?? 0) + minutes), 0);
  return capacities.reduce((most, capacity, k) => {
    const work = durations.reduce((sum, minutes, i) => sum + minutes * (demands[i]?.[k] ?? 0), 0);
    return capacity > 0 ? Math.max(most, Math.ceil(work / capacity)) : most;
  }, path);
}
