import { logBeta } from './beta';
import { logChoose, logGamma } from './gamma';

/** Chance of exactly k of n who each come with chance p. */
export const binomial = (n: number, p: number) => (k: number): number =>
  p <= 0 ? Number(k === 0) : p >= 1 ? Number(k === n) : Math.exp(logChoose(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p));

/** Chance of exactly k when `mean` are expected and the door is open (Poisson). */
export const poisson = (mean: number) => (k: number): number => Math.exp(k * Math.log(mean) - mean - logGamma(k + 1));

/** Chance of exactly k of n when the share who come is itself uncertain, Beta(a, b). */
export const betaBinomial = (n: number, a: number, b: number) => (k: number): number => Math.exp(logChoose(n, k) + logBeta(k + a, n - k + b) - logBeta(a, b));

/** Chance of exactly k, negative binomial of `size` and chance `p`: a Poisson number whose mean is gamma distributed. */
export const negativeBinomial = (size: number, p: number) => (k: number): number =>
  Math.exp(logGamma(k + size) - logGamma(size) - logGamma(k + 1) + size * Math.log(p) + k * Math.log1p(-p));
