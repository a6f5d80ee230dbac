import type { Wave } from '../event';

/** Id of the wave most of these portions belong to: of each portion, the wave whose arrivals began last before it is wanted. '' without waves. */
export function mainWave(waves: readonly Wave[], eatenAt: readonly number[]): string {
  const counts = new Map<string, number>();
  const ordered = [...waves].sort((a, b) => a.from - b.from);
  for (const minute of eatenAt) {
    const wave = ordered.findLast((w) => w.from <= minute) ?? ordered[0];
    if (wave !== undefined) counts.set(wave.id, (counts.get(wave.id) ?? 0) + 1);
  }
  return ordered.reduce((best, w) => ((counts.get(w.id) ?? 0) > (counts.get(best) ?? 0) ? w.id : best), ordered[0]?.id ?? '');
}
