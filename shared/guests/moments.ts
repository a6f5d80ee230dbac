import { normalQuantile } from './chance/quantile';
import type { Draws } from './scenarios';

/** First four cumulants of a number of people: mean, variance, and what makes it lopsided and long-tailed. Those of independent crowds add up. */
export type Cumulants = readonly [number, number, number, number];

const powerSum = (sizes: readonly number[], n: number): number => sizes.reduce((sum, s) => sum + s ** n, 0);

/** Cumulants of one person who is there with chance q (Bernoulli). */
const oneOf = (q: number): Cumulants => {
  const v = q * (1 - q);
  return [q, v, v * (1 - 2 * q), v * (1 - 6 * v)];
};

/** Cumulants of equally likely numbers. */
function spreadOf(numbers: readonly number[]): Cumulants {
  const mean = numbers.reduce((a, b) => a + b, 0) / numbers.length;
  const central = (n: number): number => numbers.reduce((sum, x) => sum + (x - mean) ** n, 0) / numbers.length;
  const variance = central(2);
  return [mean, variance, central(3), central(4) - 3 * variance * variance];
}

/**
 * Cumulants of the people of a wave who are there, as a function of the chance to be there given that one comes. Families: sums of
 * s^r times the cumulants of one. Numbers of people in pairs: a sum of a random number of draws, K(k(t)) expanded to the fourth order.
 */
export function cumulantsOf(draws: Draws): (present: number) => Cumulants {
  if (draws.kind === 'families') {
    const [s1, s2, s3, s4] = [powerSum(draws.sizes, 1), powerSum(draws.sizes, 2), powerSum(draws.sizes, 3), powerSum(draws.sizes, 4)];
    return (present) => {
      const [b1, b2, b3, b4] = oneOf(present * draws.share);
      return [s1 * b1, s2 * b2, s3 * b3, s4 * b4];
    };
  }
  const [n1, n2, n3, n4] = spreadOf(draws.scenarios);
  return (present) => {
    const [b1, b2, b3, b4] = oneOf(present);
    // Half a pair of two for each person.
    const [c1, c2, c3, c4] = [b1, 2 * b2, 4 * b3, 8 * b4];
    return [
      n1 * c1, n2 * c1 ** 2 + n1 * c2, n3 * c1 ** 3 + 3 * n2 * c1 * c2 + n1 * c3,
      n4 * c1 ** 4 + 6 * n3 * c1 ** 2 * c2 + n2 * (3 * c2 ** 2 + 4 * c1 * c3) + n1 * c4,
    ];
  };
}

/** Cumulants of independent crowds together. */
export const together = (parts: readonly Cumulants[]): Cumulants =>
  parts.reduce<Cumulants>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]], [0, 0, 0, 0]);

/**
 * How many standard deviations above the mean the quantile lies, from the normal quantile corrected for lopsidedness and tails.
 * Source: Cornish and Fisher 1938, "Moments and cumulants in the specification of distributions", the expansion to the fourth cumulant.
 */
export function deviations([, variance, third, fourth]: Cumulants, level: number): number {
  if (variance <= 0) return 0;
  const z = normalQuantile(level);
  const skew = third / variance ** 1.5;
  const tails = fourth / variance ** 2;
  return z + ((z ** 2 - 1) * skew) / 6 + ((z ** 3 - 3 * z) * tails) / 24 - ((2 * z ** 3 - 5 * z) * skew ** 2) / 36;
}
