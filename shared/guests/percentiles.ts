import type { Counts } from '../event';
import { pool, quantilesOf } from './pooled';
import { drawsOf } from './scenarios';
import { presentChance, type Coming } from './stay';
import type { Turnout } from './turnout';

/** What the percentiles need of a wave. */
export interface PresentWave {
  readonly coming: Coming;
  readonly counts: Counts;
  readonly turnout: Turnout;
}

/** Minutes between distributions; between them straight lines. */
const stepMinutes = 5;
const slices = 5;

/**
 * P10 and P90 of the people present at the start of each minute: distributions every five minutes (exact up to 240 people, see `quantilesOf`), straight lines
 * between, kept on their side of the expected number and within the invited.
 * @param expected people expected per minute from `fromMinute`.
 */
export function presencePercentiles(waves: readonly PresentWave[], fromMinute: number, expected: readonly number[]): { p10: number[]; p90: number[] } {
  const invited = waves.reduce((n, w) => n + w.turnout.invited, 0);
  const pooled = pool(waves.map((w) => drawsOf(w.counts, w.turnout, slices)));
  const knots: { low: number; high: number }[] = [];
  for (let i = 0; i < expected.length + stepMinutes; i += stepMinutes) {
    const mean = expected[Math.min(i, expected.length - 1)] ?? 0;
    const [low = 0, high = 0] = mean <= 0 ? [] : quantilesOf(pooled, invited, mean, waves.map((w) => presentChance(w.coming, fromMinute + i)), [0.1, 0.9]);
    knots.push({ low, high });
  }
  const between = (i: number, side: 'low' | 'high'): number => {
    const k = Math.floor(i / stepMinutes);
    const a = knots[k]?.[side] ?? 0;
    const b = knots[k + 1]?.[side] ?? a;
    return a + ((b - a) * (i - k * stepMinutes)) / stepMinutes;
  };
  return {
    p10: expected.map((mean, i) => Math.max(0, Math.min(mean, between(i, 'low')))),
    p90: expected.map((mean, i) => Math.min(invited, Math.max(mean, between(i, 'high')))),
  };
}
