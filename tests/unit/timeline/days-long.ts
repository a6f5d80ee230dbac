import * as fc from 'fast-check';
import { dayHolds } from './clash-holds';
import { anyDay } from './random-days';

/** Goes through so many random kitchens with people. @throws at the first of which something does not hold. */
export function randomDays(rounds: number, start: number): { clashes: number; named: number } {
  const count = { clashes: 0, named: 0 };
  fc.assert(fc.property(anyDay, (d) => {
    const found = dayHolds(d);
    count.clashes += found.clashes;
    count.named += found.named;
  }), { numRuns: rounds, seed: start | 0 });
  return count;
}
