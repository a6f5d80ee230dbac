import { adultBands, bandIds, type BandId, type Counts, type Event } from '../event';
import { computed, entered, figure, plus, type Figure, type Term } from '../figure';

const isAdult = (band: BandId): boolean => adultBands.some((b) => b === band);

/** People of one band of a wave as an input: as entered, or their part of a headcount set as a whole. */
export function bandCountTerm(event: Event, index: number, band: BandId, key: string, value: number): Term {
  const label = { word: 'guests.term.band', params: { band } };
  const set = event.guests.headcount[isAdult(band) ? 'adults' : 'children'];
  return set === null ? entered(key, label, value, 'people', `guests.waves[${index}].counts.${band}`) : computed(key, label, value, 'people', 'guests.method.split');
}

/** People of some bands of a wave. Unit: people. @param counts of the wave after a headcount override. */
export function waveCountFigure(event: Event, index: number, counts: Counts, bands: readonly BandId[] = bandIds): Figure {
  return figure(bands.reduce((n, band) => n + counts[band], 0), 'people', () => {
    const there = bands.filter((band) => counts[band] > 0);
    // With nobody there the first band stands for all.
    const shown = there.length > 0 ? there : bands.slice(0, 1);
    return { rule: 'guests.wavePeople', terms: shown.map((band) => bandCountTerm(event, index, band, band, counts[band])), sum: plus(...shown) };
  });
}
