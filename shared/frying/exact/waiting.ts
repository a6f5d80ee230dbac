import type { FryBatch, FryProblem } from './problem';

/** Minutes that all portions together wait from lift to eating. A portion wanted before its lift (guests who wait) counts as eaten at the lift. */
export const waitingOf = (p: Pick<FryProblem, 'wanted' | 'fry'>, batches: readonly FryBatch[]): number =>
  batches.reduce((sum, b) => sum + p.wanted.slice(b.first, b.end).reduce((s, t) => s + Math.max(0, t - b.dropAt - p.fry), 0), 0);
