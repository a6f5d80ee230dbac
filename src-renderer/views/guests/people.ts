import { adultBands, childBands, type BandId, type Event } from '../../../shared/event';
import { inProportion } from '../../../shared/measure';
import { changeWave, type EditResult } from '../../../shared/edit';
import type { WavePlan } from '../../../shared/guests';

/** Spreads a new total over bands in the proportion they have; into the first band when all were empty. */
export function spread(counts: Readonly<Record<BandId, number>>, bands: readonly BandId[], fallback: BandId, total: number): Partial<Record<BandId, number>> {
  const had = bands.map((band) => counts[band]);
  if (had.every((n) => n === 0)) return Object.fromEntries(bands.map((band) => [band, band === fallback ? total : 0]));
  const parts = inProportion(total, had);
  return Object.fromEntries(bands.map((band, i) => [band, parts[i] ?? 0]));
}

/** Sets a wave's adults or children as a whole; the age bands keep their proportions. */
export function changePeople(event: Event, wave: WavePlan, which: 'adults' | 'children', total: number): EditResult {
  const counts = which === 'adults' ? spread(wave.counts, adultBands, 'adult', total) : spread(wave.counts, childBands, 'age7to9', total);
  return changeWave(event, wave.id, { counts });
}
