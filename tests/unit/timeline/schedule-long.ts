import * as fc from 'fast-check';
import { kitchenHolds } from './schedule-kitchens';
import { kitchens } from './schedule-random';

/** Goes through so many random kitchens. @throws at the first of which something does not hold. */
export function randomKitchens(rounds: number, start: number): { done: number; impossible: number } {
  const count = { done: 0, impossible: 0 };
  fc.assert(fc.property(kitchens, (problem) => { if (kitchenHolds(problem)) count.done += 1; else count.impossible += 1; }), { numRuns: rounds, seed: start | 0 });
  return count;
}
