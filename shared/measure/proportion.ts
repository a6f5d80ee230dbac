/**
 * Splits a whole number in proportion to weights by Webster's method (Sainte-Laguë): each further one goes to the largest
 * weight / (2 × given + 1), earlier ones first on a tie. The parts add up to `total` exactly. Chosen over largest remainder because no part
 * ever falls when the total rises by one: one guest more must not take one from another wave.
 * @param total whole number, zero or more. @param weights zero or more each; all zero gives nothing to anybody.
 */
export function inProportion(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  if (sum <= 0) return weights.map(() => 0);
  // Rounded shares are the method's answer for a total near this one; from there a step at a time leads to it.
  const parts = weights.map((w) => Math.round((total * w) / sum));
  let given = parts.reduce((a, b) => a + b, 0);
  for (; given < total; given += 1) {
    const i = bestOf(weights, (j, k) => (weights[j] ?? 0) * (2 * (parts[k] ?? 0) + 1) > (weights[k] ?? 0) * (2 * (parts[j] ?? 0) + 1));
    parts[i] = (parts[i] ?? 0) + 1;
  }
  for (; given > total; given -= 1) {
    const i = bestOf(weights, (j, k) => (parts[j] ?? 0) > 0 && ((parts[k] ?? 0) === 0 || (weights[j] ?? 0) * (2 * (parts[k] ?? 0) - 1) <= (weights[k] ?? 0) * (2 * (parts[j] ?? 0) - 1)));
    parts[i] = (parts[i] ?? 0) - 1;
  }
  return parts;
}

/** Index of the element that is better than every one before it. */
function bestOf(list: readonly number[], better: (j: number, k: number) => boolean): number {
  let best = 0;
  for (let j = 1; j < list.length; j += 1) if (better(j, best)) best = j;
  return best;
}
