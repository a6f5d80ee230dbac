import { percentile } from './crowd';
import { deviations } from './moments';
import { exactUpTo, pool } from './pooled';
import { drawsOf } from './scenarios';
import type { Counts } from '../event';
import type { Turnout } from './turnout';

/** How the number to plan for was found: everybody is known to come; chances counted up; or standard deviations of a large crowd. */
export type ReserveMethod =
  | { readonly kind: 'sure' }
  /** `chances` of at most `least`, `least` + 1, … people that are below the share of days to cover. */
  | { readonly kind: 'chances'; readonly chances: readonly number[]; readonly least: number }
  /** `variances` of each wave, `deviations` from the mean, and half of the largest family. */
  | { readonly kind: 'spread'; readonly variances: readonly number[]; readonly deviations: number; readonly halfFamily: number };

/** How many people to plan for, all waves together. */
export interface Reserve {
  /** People expected. */
  readonly expected: number;
  /** People to plan for, the same on every wave's account taken together; never below expected nor above invited. */
  readonly people: number;
  readonly method: ReserveMethod;
}

const slices = 20;

/**
 * Pooled over the waves: the smallest number of people that on the wanted share of days is not exceeded; exact up to 240 people, above from
 * the cumulants of the same distribution. Pooling first matters: adding up a percentile of each wave would plan for too many (check `stock.pooling`).
 * @param cover share of days, 0.5-0.99.
 */
export function reserveOf(waves: readonly { readonly counts: Counts; readonly turnout: Turnout }[], cover: number): Reserve {
  const expected = waves.reduce((n, w) => n + w.turnout.expected, 0);
  const invited = waves.reduce((n, w) => n + w.turnout.invited, 0);
  if (waves.every((w) => !w.turnout.uncertain)) return { expected, people: expected, method: { kind: 'sure' } };
  const within = (people: number): number => Math.max(expected, Math.min(invited, people));
  const draws = waves.map((w) => drawsOf(w.counts, w.turnout, slices));
  const pooled = pool(draws);
  const everybody = waves.map(() => 1);
  if (invited > exactUpTo) {
    const method = {
      kind: 'spread', variances: draws.map((d) => pool([d]).cumulants([1])[1]), deviations: deviations(pooled.cumulants(everybody), cover), halfFamily: pooled.halfFamily,
    } as const;
    const sd = Math.sqrt(method.variances.reduce((a, b) => a + b, 0));
    return { expected, people: within(expected + method.deviations * sd + method.halfFamily), method };
  }
  const crowd = pooled.exactly(everybody);
  const wanted = percentile(crowd, cover);
  const chances: number[] = [];
  let least = 0;
  let sum = 0;
  for (let k = 0; k < wanted; k += 1) {
    sum += crowd.chance[k] ?? 0;
    if (sum < 1e-4) least = k + 1;
    else chances.push(sum);
  }
  return { expected, people: within(wanted), method: { kind: 'chances', chances, least } };
}

/**
 * People to plan for in each wave: the expected, and of the reserve a part in proportion to how many more than expected could come to it.
 * A wave that is sure gets none of the reserve.
 */
export function plannedOf(turnouts: readonly Turnout[], reserve: Reserve): number[] {
  const room = turnouts.map((t) => (t.uncertain ? Math.min(t.invited, t.range?.high ?? t.invited) - t.expected : 0));
  const rooms = room.reduce((a, b) => a + b, 0);
  const extra = reserve.people - reserve.expected;
  return turnouts.map((t, i) => t.expected + (rooms > 0 ? Math.min(room[i] ?? 0, (extra * (room[i] ?? 0)) / rooms) : 0));
}
