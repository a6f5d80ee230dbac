import type { Wave } from '../event';
import { countUpTo } from './exact';

/**
 * Id of the wave most of these portions belong to: of each portion, the wave whose arrivals began last before it is wanted; of equals the
 * first. '' without waves.
 * @param ordered the waves, by the minute arrivals begin.
 * @param eatenAt minutes, ascending.
 */
export function mainWave(ordered: readonly Wave[], eatenAt: readonly number[]): string {
  let [best, most, before] = [ordered[0]?.id ?? '', 0, 0];
  ordered.forEach((wave, i) => {
    const next = ordered[i + 1];
    // Whole minutes: what is wanted before the next wave begins.
    const until = next === undefined ? eatenAt.length : countUpTo(eatenAt, Math.ceil(next.from) - 1);
    if (until - before > most) [best, most] = [wave.id, until - before];
    before = Math.max(before, until);
  });
  return best;
}

/** Waves by the minute their arrivals begin. */
export const byArrival = (waves: readonly Wave[]): Wave[] => [...waves].sort((a, b) => a.from - b.from);
