import type { Wave } from '../event';

/** A three-point guess of people who come. */
export interface ThreePoint {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** How many of a wave's invited come. `share` = expected / invited; `range` only where the cook gave a range, already grown by `scale` with a headcount set as a whole. */
export interface Turnout {
  readonly invited: number;
  readonly expected: number;
  readonly share: number;
  readonly range: ThreePoint | null;
  readonly scale: number;
  /** The range as entered, in order. */
  readonly guess: ThreePoint | null;
  /** False when everybody invited is sure to come. */
  readonly uncertain: boolean;
}

/** Mean of a PERT distribution (low + 4 × likely + high) / 6 (three-point estimate, shape 4; check `turnout.threePoint`). */
export const pertMean = (r: ThreePoint): number => (r.low + 4 * r.likely + r.high) / 6;

/** Standard deviation of a PERT distribution: range × sqrt(a b / 252) with a = 1 + 4 (likely - low) / range, b likewise (check `turnout.threePoint`). */
export function pertSd({ low, likely, high }: ThreePoint): number {
  const range = high - low;
  if (range <= 0) return 0;
  return range * Math.sqrt(((1 + (4 * (likely - low)) / range) * (1 + (4 * (high - likely)) / range)) / 252);
}

/**
 * Turnout of a wave. A range is a guess for the wave as entered: when the headcount was set as a whole it grows with the wave,
 * and a number above the invited counts as everybody.
 * @param entered people of the wave as entered, before an override. @param invited people after it.
 */
export function turnoutOf(wave: Wave, entered: number, invited: number): Turnout {
  const { turnout } = wave;
  if (turnout.kind === 'known') return { invited, expected: invited, share: 1, range: null, scale: 1, guess: null, uncertain: false };
  if (turnout.kind === 'share') {
    return { invited, expected: invited * turnout.share, share: turnout.share, range: null, scale: 1, guess: null, uncertain: invited > 0 && turnout.share > 0 && turnout.share < 1 };
  }
  const scale = entered > 0 ? invited / entered : 1;
  const [low = 0, likely = 0, high = 0] = [turnout.low, turnout.likely, turnout.high]
    .toSorted((a, b) => a - b);
  const guess = { low, likely, high };
  const range = { low: low * scale, likely: likely * scale, high: high * scale };
  const expected = Math.min(invited, pertMean(range));
  return { invited, expected, share: invited > 0 ? expected / invited : 0, range, scale, guess, uncertain: range.high > range.low && range.low < invited };
}
