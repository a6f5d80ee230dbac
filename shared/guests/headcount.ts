import { adultBands, bandIds, childBands, type BandId, type Counts, type Event } from '../event';

/** Sum of the counts of some bands. Unit: people. */
export const peopleIn = (counts: Readonly<Record<BandId, number>>, bands: readonly BandId[]): number =>
  bands.reduce((sum, band) => sum + counts[band], 0);

/** Everybody of a wave, all bands. Unit: people. */
export const everybody = (counts: Readonly<Record<BandId, number>>): number => peopleIn(counts, bandIds);

/**
 * Splits a whole number in proportion to weights by largest remainder (Hamilton's method): each gets the whole part of its
 * exact share, the rest goes one by one to the largest remainders, earlier ones first. The parts add up to `total` exactly.
 * @param total whole number, zero or more. @param weights zero or more each, not all zero.
 */
export function largestRemainder(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  const exact = weights.map((w) => (sum > 0 ? (total * w) / sum : 0));
  const parts = exact.map((x) => Math.floor(x + 1e-9));
  let left = total - parts.reduce((a, b) => a + b, 0);
  const order = exact.map((x, i) => ({ i, rest: x - (parts[i] ?? 0) })).toSorted((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of order) {
    if (left <= 0) break;
    parts[i] = (parts[i] ?? 0) + 1;
    left -= 1;
  }
  return parts;
}

/** Where people go who belong to no band yet: adults to `adult`, children to the middle of childhood. */
const startBand = { adults: 'adult', children: 'age7to9' } as const;

/**
 * Invited people of each wave by band after the headcount override: the total set for adults and for children is spread over all waves
 * and bands in proportion to what the waves say; when they say nothing, it goes to the first wave.
 */
export function invitedCounts(event: Event): Counts[] {
  const waves = event.guests.waves;
  const counts: Counts[] = waves.map((w) => ({ ...w.counts }));
  for (const who of ['adults', 'children'] as const) {
    const total = event.guests.headcount[who];
    const first = counts[0];
    if (total === null || first === undefined) continue;
    const bands = who === 'adults' ? adultBands : childBands;
    const cells = counts.flatMap((c) => bands.map((band) => ({ c, band })));
    const weights = cells.map(({ c, band }) => c[band]);
    if (weights.every((w) => w === 0)) {
      first[startBand[who]] = total;
      continue;
    }
    const parts = largestRemainder(total, weights);
    cells.forEach(({ c, band }, i) => { c[band] = parts[i] ?? 0; });
  }
  return counts;
}
