import { emptyCrowd } from './crowd';
import { blockFor, fromBlocks } from './percentiles';
import { addWave, drawsOf, mostOf } from './scenarios';
import type { Counts } from '../event';
import type { Turnout } from './turnout';

/** How many people to plan for, all waves together. */
export interface Reserve {
  /** People expected. */
  readonly expected: number;
  /** People to plan for, the same on every wave's account taken together; never below expected nor above invited. */
  readonly people: number;
  /** Chances of at most `least`, `least` + 1, … blocks of people that are below the share of days to cover. */
  readonly chances: readonly number[];
  readonly least: number;
  readonly block: number;
}

const slices = 20;

/**
 * Pooled over the waves: the smallest number of people that on the wanted share of days is not exceeded.
 * Pooling first matters: adding up a percentile of each wave would plan for too many (methods, section 1.4).
 * @param cover share of days, 0.5-0.99.
 */
export function reserveOf(waves: readonly { readonly counts: Counts; readonly turnout: Turnout }[], cover: number): Reserve {
  const expected = waves.reduce((n, w) => n + w.turnout.expected, 0);
  const invited = waves.reduce((n, w) => n + w.turnout.invited, 0);
  if (waves.every((w) => !w.turnout.uncertain)) return { expected, people: expected, chances: [], least: 0, block: 1 };
  const block = blockFor(invited);
  const draws = waves.map((w) => drawsOf(w.counts, w.turnout, block, slices));
  const crowd = emptyCrowd(draws.reduce((n, d) => n + mostOf(d), 0));
  for (const d of draws) addWave(crowd, d, 1);
  const chances: number[] = [];
  let least = 0;
  let sum = 0;
  for (let k = 0; k <= crowd.top; k += 1) {
    sum += crowd.chance[k] ?? 0;
    if (sum >= cover - 1e-12) break;
    if (sum < 1e-4) least = k + 1;
    else chances.push(sum);
  }
  const people = Math.max(expected, Math.min(invited, fromBlocks(expected, least + chances.length, block)));
  return { expected, people, chances, least, block };
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
