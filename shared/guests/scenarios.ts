import { highest } from '../measure';
import { peopleIn } from './headcount';
import { adultBands, childBands, type Counts } from '../event';
import { addCrowd, addFamily, emptyCrowd, familySizes, type Crowd } from './crowd';
import type { ThreePoint, Turnout } from './turnout';

/** A wave as draws: either families who each come with the same chance, or equally likely numbers of people who come in pairs. */
export type Draws =
  | { readonly kind: 'families'; readonly sizes: readonly number[]; readonly share: number }
  | { readonly kind: 'numbers'; readonly scenarios: readonly number[] };

const cells = 64;

/**
 * Equally likely values of a PERT distribution: its quantiles at the middles of `count` equal slices, by one numerical pass over the
 * beta density (64 cells, midpoint rule; good to about 1 % of the range).
 */
export function pertSlices(r: ThreePoint, count: number): number[] {
  const range = r.high - r.low;
  if (range <= 0) return Array.from({ length: count }, () => r.likely);
  const a = (4 * (r.likely - r.low)) / range;
  const b = (4 * (r.high - r.likely)) / range;
  const mass = Array.from({ length: cells }, (_, i) => ((i + 0.5) / cells) ** a * (1 - (i + 0.5) / cells) ** b);
  const total = mass.reduce((x, y) => x + y, 0);
  const values: number[] = [];
  let sum = 0;
  for (let i = 0; i < cells; i += 1) {
    const cell = (mass[i] ?? 0) / total;
    while (values.length < count && sum + cell >= (values.length + 0.5) / count) {
      values.push(r.low + (range * (i + ((values.length + 0.5) / count - sum) / cell)) / cells);
    }
    sum += cell;
  }
  while (values.length < count) values.push(r.high);
  return values;
}

/** Draws of one wave. @param slices number of equally likely turnouts for a wave with a range. */
export function drawsOf(counts: Counts, turnout: Turnout, slices: number): Draws {
  const { range } = turnout;
  if (range === null) return { kind: 'families', sizes: familySizes(peopleIn(counts, adultBands), peopleIn(counts, childBands)), share: turnout.share };
  return { kind: 'numbers', scenarios: pertSlices(range, slices).map((n) => Math.min(n, turnout.invited)) };
}

/** Most people the draws can bring. */
export const mostOf = (draws: Draws): number =>
  draws.kind === 'families' ? sum(draws.sizes) : Math.round(highest(draws.scenarios, 0));

/** Most people who come or stay away together. */
export const largestFamily = (draws: Draws): number => (draws.kind === 'families' ? highest(draws.sizes, 0) : 2);

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);

/** Adds a wave to a crowd, each family there with chance `present` given that it comes at all. */
export function addWave(crowd: Crowd, draws: Draws, present: number): void {
  if (present <= 0) return;
  if (draws.kind === 'families') {
    for (const size of draws.sizes) addFamily(crowd, size, present * draws.share);
    return;
  }
  addCrowd(crowd, mixture(draws.scenarios.map(Math.round), present));
}

/** The crowd of equally likely numbers of people in pairs, each pair there with chance `q`. Numbers rise, so one crowd grows through all of them. */
function mixture(numbers: readonly number[], q: number): Crowd {
  const most = highest(numbers, 0);
  const mixed = emptyCrowd(most);
  const pairs = emptyCrowd(most);
  mixed.chance[0] = 0;
  mixed.top = most;
  let added = 0;
  for (const n of numbers) {
    for (; added < Math.floor(n / 2); added += 1) addFamily(pairs, 2, q);
    const single = n % 2 === 1 ? q : 0;
    for (let k = 0; k <= n; k += 1) {
      const chance = (pairs.chance[k] ?? 0) * (1 - single) + (pairs.chance[k - 1] ?? 0) * single;
      mixed.chance[k] = (mixed.chance[k] ?? 0) + chance / numbers.length;
    }
  }
  return mixed;
}
