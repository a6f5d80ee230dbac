import table from './circle-packing.json';

const known: ReadonlyMap<number, number> = new Map(Object.entries(table.ratio).map(([n, ratio]) => [Number(n), ratio]));

/** Most circles the table lists. */
export const packingListed: number = Math.max(...known.keys());

/**
 * Smallest ratio container radius / circle radius that holds n equal circles. n = 1-20: published table (Wikipedia, "Circle packing in a circle");
 * 21-40: from memory, each reached by a construction; beyond: sqrt(n / 0.79), the density of the largest listed. 0 for n = 0.
 */
export const packingRatio = (n: number): number => (n <= 0 ? 0 : (known.get(n) ?? Math.sqrt(n / 0.79)));
