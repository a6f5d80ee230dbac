import { highest } from '../measure';
import { emptyCrowd, percentile, type Crowd } from './crowd';
import { cumulantsOf, deviations, together, type Cumulants } from './moments';
import { addWave, largestFamily, mostOf, type Draws } from './scenarios';

/** Up to so many people invited the distribution is worked out exactly; above, from its first four cumulants, which is then good to a family. */
export const exactUpTo = 240;

/** Waves taken together as one crowd. */
export interface Pooled {
  /** The exact distribution with each wave's chance to be there. */
  readonly exactly: (present: readonly number[]) => Crowd;
  /** Its cumulants. */
  readonly cumulants: (present: readonly number[]) => Cumulants;
  /** Half of the largest family: a crowd of families is rounded up to the next whole family. */
  readonly halfFamily: number;
}

/** Pools waves. */
export function pool(waves: readonly Draws[]): Pooled {
  const most = waves.reduce((n, d) => n + mostOf(d), 0);
  const each = waves.map(cumulantsOf);
  return {
    exactly: (present) => {
      const crowd = emptyCrowd(most);
      waves.forEach((d, i) => addWave(crowd, d, present[i] ?? 0));
      return crowd;
    },
    cumulants: (present) => together(each.map((of, i) => of(present[i] ?? 0))),
    halfFamily: highest(waves.map(largestFamily), 0) / 2,
  };
}

/**
 * Number of people that is not exceeded with each chance of `levels`. How a crowd is cut into waves makes no difference beyond which
 * people are of one family.
 * @param invited decides between the exact distribution and its cumulants. @param mean people expected.
 */
export function quantilesOf(pooled: Pooled, invited: number, mean: number, present: readonly number[], levels: readonly number[]): number[] {
  if (invited <= exactUpTo) {
    const crowd = pooled.exactly(present);
    return levels.map((level) => percentile(crowd, level));
  }
  const cumulants = pooled.cumulants(present);
  return levels.map((level) => mean + deviations(cumulants, level) * Math.sqrt(cumulants[1]) + pooled.halfFamily);
}
