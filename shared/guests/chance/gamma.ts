const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** Natural logarithm of the gamma function for x > 0. Lanczos approximation, g = 7, 9 terms (C. Lanczos 1964), relative error below 1e-13. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  let sum: number = lanczos[0];
  for (let i = 1; i < lanczos.length; i += 1) sum += (lanczos[i] ?? 0) / (x - 1 + i);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Natural logarithm of n over k. */
export const logChoose = (n: number, k: number): number => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);

/**
 * Regularised lower incomplete gamma function P(a, x), the distribution function of a Gamma(a, 1). Series for x < a + 1, otherwise the
 * continued fraction by Lentz's method (Abramowitz and Stegun 6.5.29 and 6.5.31).
 */
export function gammaShare(a: number, x: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 10000 && Math.abs(term) > Math.abs(sum) * 1e-16; n += 1) {
      term *= x / (a + n);
      sum += term;
    }
    return sum * front;
  }
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 10000; i += 1) {
    const an = -i * (i - a);
    b += 2;
    d = 1 / (an * d + b || tiny);
    c = b + an / c || tiny;
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return 1 - front * h;
}
