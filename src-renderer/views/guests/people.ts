import { adultBands, childBands, type BandId, type Event } from '../../../shared/event';
import { changeWave, type EditResult } from '../../../shared/edit';
import type { WavePlan } from '../../../shared/guests';

/** Spreads a new total over bands in the proportion they have; into the first band when all were empty. Largest remainders get the odd people. */
export function spread(counts: Readonly<Record<BandId, number>>, bands: readonly BandId[], fallback: BandId, total: number): Partial<Record<BandId, number>> {
  const had = bands.reduce((sum, band) => sum + counts[band], 0);
  if (had === 0) return Object.fromEntries(bands.map((band) => [band, band === fallback ? total : 0]));
  const exact = bands.map((band) => ({ band, share: (counts[band] * total) / had }));
  const left = total - exact.reduce((sum, e) => sum + Math.floor(e.share), 0);
  const odd = new Set([...exact].sort((a, b) => (b.share % 1) - (a.share % 1)).slice(0, left).map((e) => e.band));
  return Object.fromEntries(exact.map((e) => [e.band, Math.floor(e.share) + (odd.has(e.band) ? 1 : 0)]));
}

/** Sets a wave's adults or children as a whole; the age bands keep their proportions. */
export function changePeople(event: Event, wave: WavePlan, which: 'adults' | 'children', total: number): EditResult {
  const counts = which === 'adults' ? spread(wave.counts, adultBands, 'adult', total) : spread(wave.counts, childBands, 'age7to9', total);
  return changeWave(event, wave.id, { counts });
}
