import table from './appetite.json';

/** How much one age band eats and drinks; an adult is 1. */
export interface BandFactor {
  readonly band: string;
  readonly food: number;
  readonly low: number;
  readonly high: number;
  readonly cold: number;
  /** Hot drinks without caffeine, and with it (0 below 13 years). */
  readonly hot: number;
  readonly hotCaffeinated: number;
  readonly source: string;
  readonly status: string;
  readonly note: string;
}

/** One point of the shared appetite: `each` of `dishes` similar dishes is this share of its portion. */
export interface AppetitePoint {
  readonly dishes: number;
  readonly each: number;
  readonly source: string;
  readonly status: string;
}

const byBand: ReadonlyMap<string, BandFactor> = new Map(table.bands.map((b) => [b.band, b]));

/** Factors of all age bands, youngest first. */
export const bandFactors: readonly BandFactor[] = table.bands;

/** The curve of shared appetite, one dish first. */
export const appetiteCurve: readonly AppetitePoint[] = table.curve;

/** Factors of an age band. @throws RangeError when the table has no such band (a programming fault, never user input). */
export function bandFactor(band: string): BandFactor {
  const found = byBand.get(band);
  if (found === undefined) throw new RangeError(`no factors for the age band "${band}"`);
  return found;
}

/**
 * Share of its portion that each of `dishes` similar dishes is taken. Beyond the table all of them together stay at the table's
 * last total, so that a further dish never makes people eat less of all. Range: 0 < share <= 1 for one dish or more.
 */
export function sharedAppetite(dishes: number): number {
  const last = appetiteCurve.at(-1);
  const found = appetiteCurve.find((p) => p.dishes === Math.max(1, Math.round(dishes)));
  if (found !== undefined) return found.each;
  return last === undefined ? 1 : (last.each * last.dishes) / dishes;
}
