import { betaShare } from './beta';
import { gammaShare } from './gamma';

/** Where a rising function of x passes `level`, between `low` and `high`, by halving until the numbers run out of digits. */
export function passes(rising: (x: number) => number, level: number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200 && b - a > 1e-15 * Math.max(1e-300, Math.abs(b)); i += 1) {
    const middle = (a + b) / 2;
    if (rising(middle) < level) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Quantile of Beta(a, b). @param level 0-1. */
export const betaQuantile = (a: number, b: number, level: number): number => passes((x) => betaShare(a, b, x), level, 0, 1);

/** Quantile of a gamma distribution with this shape and rate. @param level 0-1. */
export function gammaQuantile(shape: number, rate: number, level: number): number {
  let high = shape + 10 * Math.sqrt(shape) + 10;
  while (gammaShare(shape, high) < level) high *= 2;
  return passes((x) => gammaShare(shape, x), level, 0, high) / rate;
}

/** Normal density at z. */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Normal distribution function: through the incomplete gamma function, P(Z <= z) = (1 ± P(1/2, z²/2)) / 2. */
export const normalShare = (z: number): number => (1 + Math.sign(z) * gammaShare(0.5, (z * z) / 2)) / 2;

/** Quantile of the normal distribution. @param level 0-1, exclusive. */
export const normalQuantile = (level: number): number => passes(normalShare, level, -40, 40);

/** Expected amount by which a standard normal exceeds z: the unit normal loss, density(z) - z (1 - share(z)). */
export const normalLoss = (z: number): number => normalDensity(z) - z * normalShare(-z);

/** Smallest whole number k from 0 with P(N <= k) >= level, from the chance of each number. @param most stop here at the latest. */
export function countQuantile(chance: (k: number) => number, level: number, most: number): number {
  let sum = 0;
  for (let k = 0; k < most; k += 1) {
    sum += chance(k);
    if (sum >= level - 1e-13) return k;
  }
  return most;
}
