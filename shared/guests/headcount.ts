import { inProportion } from '../measure';
import { adultBands, bandIds, childBands, type BandId, type Counts, type Event } from '../event';

/** Sum of the counts of some bands. Unit: people. */
export const peopleIn = (counts: Readonly<Record<BandId, number>>, bands: readonly BandId[]): number =>
  bands.reduce((sum, band) => sum + counts[band], 0);

/** Everybody of a wave, all bands. Unit: people. */
export const everybody = (counts: Readonly<Record<BandId, number>>): number => peopleIn(counts, bandIds);

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
    const parts = inProportion(total, weights);
    cells.forEach(({ c, band }, i) => { c[band] = parts[i] ?? 0; });
  }
  return counts;
}
