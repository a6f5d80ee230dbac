import { bandIds, type BandId, type Event } from '../event';
import { entered, figure, plus, times, worked, type Figure, type Part, type Term } from '../figure';
import type { WavePlan } from '../guests';
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

/** People of a band the amounts are planned for: the count, moved by turnout to the share of days to be covered. */
function plannedTerm(event: Event, wave: WavePlan, band: BandId): Term {
  const [count, planned] = [wave.counts[band], wave.planned[band]];
  const index = event.guests.waves.findIndex((w) => w.id === wave.id);
  const label = { word: 'menu.term.people', params: { band, wave: wave.name } };
  const path = `guests.waves[${index}].counts.${band}`;
  if (planned === count || count === 0) return entered(`n-${band}`, label, planned, 'people', path);
  return worked(`n-${band}`, label, figure(planned, 'people', () => ({
    rule: 'menu.plannedPeople',
    terms: [
      entered('count', { word: 'menu.term.invited', params: { band } }, count, 'people', path),
      entered('cover', { word: 'menu.term.cover' }, planned / count, '', `guests.waves[${index}].turnout`),
    ],
    sum: times('count', 'cover'),
  })));
}

function bandTerm(band: BandId, value: ReturnType<BandValue>): Term {
  const label = { word: 'menu.term.bandCounts', params: { band } };
  return 'figure' in value ? worked(`f-${band}`, label, value.figure) : { key: `f-${band}`, label, value: value.known.value, unit: '', origin: value.known.origin };
}

/** People of a wave counted as adults: people of each band times what one of them counts, added up. */
export function countedAsAdults(event: Event, wave: WavePlan, of: BandValue): Figure {
  const value = bandIds.reduce((sum, band) => sum + wave.planned[band] * valueOf(of(band)), 0);
  return figure(value, 'people', () => {
    const there = bandIds.filter((band) => wave.planned[band] > 0);
    // With nobody there the adults stand for all, so that the working still shows what is multiplied.
    const shown: readonly BandId[] = there.length > 0 ? there : ['adult'];
    const parts: Part[] = shown.map((band) => times(`n-${band}`, `f-${band}`));
    return { rule: 'menu.asAdults', terms: shown.flatMap((band) => [plannedTerm(event, wave, band), bandTerm(band, of(band))]), sum: plus(...parts) };
  });
}
