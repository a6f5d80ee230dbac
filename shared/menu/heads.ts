import { adultBands, bandIds, childBands, type BandId, type Event } from '../event';
import { divide, figure, plus, times, worked, type Figure, type Part, type Term } from '../figure';
import { bandCountTerm, familySquares, waveCountFigure, type WavePlan } from '../guests';
import { bandFactor } from '../reference';
import { inForce, type Known } from './in-force';

/** What one person of each band counts, an adult's being 1: a plain factor or a figure of its own. */
export type BandValue = (band: BandId) => { readonly known: Known } | { readonly figure: Figure };

const valueOf = (v: ReturnType<BandValue>): number => ('known' in v ? v.known.value : v.figure.value);

/** Food: the factor of the band's table row, or the household's own (`band.<band>.food`). */
export const foodOfBand = (event: Event): BandValue => (band) => {
  const row = bandFactor(band);
  return { known: inForce(event, `band.${band}.food`, row.food, '', row.source) };
};

/** Place of a wave in the event. */
export const waveIndex = (event: Event, wave: WavePlan): number => event.guests.waves.findIndex((w) => w.id === wave.id);

function bandTerm(band: BandId, value: ReturnType<BandValue>): Term {
  const label = { word: 'menu.term.bandCounts', params: { band } };
  return 'figure' in value ? worked(`f-${band}`, label, value.figure) : { key: `f-${band}`, label, value: value.known.value, unit: '', origin: value.known.origin };
}

/** Part of a wave's invited who are expected. Range 0-1. */
function comingPart(event: Event, wave: WavePlan): Figure {
  return figure(wave.turnout.share, '', () => ({
    rule: 'menu.comingPart',
    terms: [worked('coming', { word: 'menu.term.coming' }, wave.coming), worked('invited', { word: 'guests.term.invited' }, waveCountFigure(event, waveIndex(event, wave), wave.counts))],
    sum: divide('coming', 'invited'),
  }));
}

/** People of a wave expected, counted as adults: people of each band times what one of them counts, added up, times the part that comes. */
export function countedAsAdults(event: Event, wave: WavePlan, of: BandValue): Figure {
  const invited = bandIds.reduce((sum, band) => sum + wave.counts[band] * valueOf(of(band)), 0);
  return figure(invited * wave.turnout.share, 'people', () => {
    const there = bandIds.filter((band) => wave.counts[band] > 0);
    // With nobody there the adults stand for all, so that the working still shows what is multiplied.
    const shown: readonly BandId[] = there.length > 0 ? there : ['adult'];
    const parts: Part[] = shown.map((band) => times(`n-${band}`, `f-${band}`));
    const terms = shown.flatMap((band) => [bandCountTerm(event, waveIndex(event, wave), band, `n-${band}`, wave.counts[band]), bandTerm(band, of(band))]);
    if (wave.turnout.invited === 0 || wave.turnout.share === 1) return { rule: 'menu.asAdults', terms, sum: plus(...parts) };
    return { rule: 'menu.asAdults', terms: [...terms, worked('part', { word: 'menu.term.comingPart' }, comingPart(event, wave))], sum: times(plus(...parts), 'part') };
  });
}

/** Sum over the families of a wave of the square of what a family counts, an adult's being 1 (see `familySquares`). */
export function squaresOfFamilies(wave: WavePlan, of: BandValue): number {
  const counts = (bands: readonly BandId[]): number[] => bands.flatMap((band) => Array.from({ length: wave.counts[band] }, () => valueOf(of(band))));
  return familySquares(counts(adultBands), counts(childBands));
}
