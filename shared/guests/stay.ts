/** Minutes a guest stays: shortest, usual (most frequent), longest; a triangular distribution. */
export interface Stay {
  readonly shortest: number;
  readonly usual: number;
  readonly longest: number;
}

/** Mean stay. Unit: minutes. Mean of a triangular distribution. */
export const meanStay = (s: Stay): number => (s.shortest + s.usual + s.longest) / 3;

const square = (x: number): number => (x > 0 ? x * x : 0);
const cube = (x: number): number => (x > 0 ? x * x * x : 0);

/**
 * Of the first `u` minutes after arriving, those a guest is expected to be there: K(u) = integral from 0 to u of P(stay > x), the
 * mean of min(stay, u). Closed form for the triangular stay, its two one-sided cases and the fixed stay. Unit: minutes; 0 for u <= 0.
 * Source: Eick, Massey and Whitt 1993, "The physics of the Mt/G/infinity queue"; the closed form is the twice-integrated density.
 */
export function minutesSpent(s: Stay, u: number): number {
  const { shortest: p, usual: m, longest: q } = s;
  if (u <= p) return Math.max(0, u);
  const spread = q - p;
  if (u >= q) return meanStay(s);
  const early = m - p;
  const late = q - m;
  if (early <= 0) return u - square(u - p) / spread + cube(u - p) / (3 * spread * spread);
  if (late <= 0) return u - cube(u - p) / (3 * spread * spread);
  return u - (cube(u - p) / early - cube(u - m) * (1 / early + 1 / late)) / (3 * spread);
}

/** When a wave comes: from, to (minutes), and how long its people stay. */
export interface Coming {
  readonly from: number;
  readonly to: number;
  readonly stay: Stay;
}

/** Length of the arrival window. Unit: minutes. A window under one minute counts as one minute. */
export const windowMinutes = (c: Coming): number => Math.max(1, c.to - c.from);

/** Chance that somebody of the wave, who comes, is there at minute `t`: (K(t - from) - K(t - to)) / window. 0-1. */
export function presentChance(c: Coming, t: number): number {
  const window = windowMinutes(c);
  const chance = (minutesSpent(c.stay, t - c.from) - minutesSpent(c.stay, t - c.from - window)) / window;
  return Math.min(1, Math.max(0, chance));
}

/** Chance that somebody of the wave has arrived by minute `t`: evenly over the window. 0-1. */
export const arrivedChance = (c: Coming, t: number): number => Math.min(1, Math.max(0, (t - c.from) / windowMinutes(c)));
