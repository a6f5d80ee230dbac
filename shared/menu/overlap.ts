import type { WavePlan } from '../guests';

/** Mean of min(stay, x) for a triangular stay; for x below the shortest it is x itself. Closed form of the integral of the survival function. */
function meanUpTo(x: number, { shortest: a, usual: c, longest: b }: WavePlan['stay']): number {
  const mean = (a + c + b) / 3;
  if (x <= a) return x;
  if (x >= b) return mean;
  if (x <= c && c > a) return x - (x - a) ** 3 / (3 * (b - a) * (c - a));
  return b > c ? mean - (b - x) ** 3 / (3 * (b - a) * (b - c)) : mean;
}

/**
 * Share of a wave's people who are there at some time between `from` and `to`: arrivals even over the wave's window, stays triangular.
 * Range 0-1. A wave that arrives all at once is treated as arriving within one minute.
 */
export function shareThereBetween(wave: WavePlan, from: number, to: number): number {
  const width = Math.max(1, wave.to - wave.from);
  const lastArrival = Math.min(wave.from + width, to);
  if (lastArrival <= wave.from || to <= from) return 0;
  // A guest arriving at t is still there at `from` when the stay exceeds from − t.
  const there = meanUpTo(from - wave.from, wave.stay) - meanUpTo(from - lastArrival, wave.stay);
  return Math.min(1, Math.max(0, there / width));
}
