import type { Counts } from '../event';
import { emptyCrowd, percentile } from './crowd';
import { addWave, drawsOf, mostOf } from './scenarios';
import { presentChance, type Coming } from './stay';
import type { Turnout } from './turnout';

/** What the percentiles need of a wave. */
export interface PresentWave {
  readonly coming: Coming;
  readonly counts: Counts;
  readonly turnout: Turnout;
}

/** Most draws of single people; larger crowds are drawn in blocks. */
const mostDraws = 240;
/** Minutes between exact distributions; between them straight lines. */
const stepMinutes = 5;
const slices = 5;

/** People per block, so that an exact distribution stays small. 1 up to 240 people. */
export const blockFor = (people: number): number => Math.max(1, Math.ceil(people / mostDraws));

/**
 * A percentile of people from one of blocks: blocks of b spread sqrt(b) times too wide, so the mean carries 1 - 1/sqrt(b) of the weight.
 * Both parts only rise with a guest more, hence so does the result.
 */
export const fromBlocks = (mean: number, blocks: number, block: number): number =>
  block === 1 ? blocks : mean * (1 - 1 / Math.sqrt(block)) + (blocks * block) / Math.sqrt(block);

/**
 * P10 and P90 of the people present at the start of each minute: exact distributions every five minutes, straight lines between,
 * kept on their side of the expected number and within the invited.
 * @param expected people expected per minute from `fromMinute`.
 */
export function presencePercentiles(waves: readonly PresentWave[], fromMinute: number, expected: readonly number[]): { p10: number[]; p90: number[] } {
  const invited = waves.reduce((n, w) => n + w.turnout.invited, 0);
  const block = blockFor(invited);
  const draws = waves.map((w) => ({ coming: w.coming, draws: drawsOf(w.counts, w.turnout, block, slices) }));
  const most = draws.reduce((n, d) => n + mostOf(d.draws), 0);
  const knots: { low: number; high: number }[] = [];
  for (let i = 0; i < expected.length + stepMinutes; i += stepMinutes) {
    const mean = expected[Math.min(i, expected.length - 1)] ?? 0;
    if (mean <= 0) {
      knots.push({ low: 0, high: 0 });
      continue;
    }
    const crowd = emptyCrowd(most);
    for (const d of draws) addWave(crowd, d.draws, presentChance(d.coming, fromMinute + i));
    knots.push({ low: fromBlocks(mean, percentile(crowd, 0.1), block), high: fromBlocks(mean, percentile(crowd, 0.9), block) });
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
