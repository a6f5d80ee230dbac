import { packingRatio } from '../../reference';

/** Share of the container covered by n circles in their tightest known packing: n / ratio². */
export const packingDensity = (n: number): number => n / packingRatio(n) ** 2;

/** Largest number of equal circles whose packing fits a ratio container radius / circle radius. */
export function mostCircles(ratio: number): number {
  let n = 0;
  // The ratios never fall as n grows, so the first that does not fit ends the search.
  while (packingRatio(n + 1) <= ratio + 1e-12) n += 1;
  return n;
}
