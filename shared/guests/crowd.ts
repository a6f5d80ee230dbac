/**
 * How many people are there, as a distribution. Families arrive and leave together, so that people of one family count as one draw.
 * Who belongs together is not asked; two adults with up to two children is taken (common practice, no source): an even pairing of a
 * wave's adults and children in order. A guest more only makes one family larger or adds one, which is why no percentile ever falls.
 */
export function familySizes(adults: number, children: number): number[] {
  const families = Math.max(Math.ceil(adults / 2), Math.ceil(children / 2));
  return Array.from({ length: families }, (_, k) => Math.min(2, Math.max(0, adults - 2 * k)) + Math.min(2, Math.max(0, children - 2 * k)));
}

/**
 * Sum over the families of a wave of the square of what a family takes together: times q (1 - q) the variance of what the wave takes when each
 * family comes with chance q. The largest takers are paired first, so that one guest more never lowers what any family takes.
 * @param takes what each adult, and each child, takes.
 */
export function familySquares(adults: readonly number[], children: readonly number[]): number {
  const [a, c] = [adults, children].map((takes) => takes.toSorted((x, y) => y - x));
  return familySizes(adults.length, children.length).reduce((sum, _, k) => {
    const taken = (a?.[2 * k] ?? 0) + (a?.[2 * k + 1] ?? 0) + (c?.[2 * k] ?? 0) + (c?.[2 * k + 1] ?? 0);
    return sum + taken * taken;
  }, 0);
}

/** A distribution over whole numbers under construction: `chance[k]` of k, for k up to `top`. */
export interface Crowd {
  readonly chance: Float64Array;
  top: number;
}

/** Nobody, for sure. @param most largest number that will be reached. */
export function emptyCrowd(most: number): Crowd {
  const chance = new Float64Array(most + 1);
  chance[0] = 1;
  return { chance, top: 0 };
}

/** Adds a family of `size` that is there with chance `q`, independent of the others. Exact convolution, in place. */
export function addFamily(crowd: Crowd, size: number, q: number): void {
  if (q <= 0 || size <= 0) return;
  const { chance, top } = crowd;
  const not = 1 - q;
  for (let k = top + size; k > top; k -= 1) chance[k] = (chance[k - size] ?? 0) * q;
  for (let k = top; k >= size; k -= 1) chance[k] = (chance[k] ?? 0) * not + (chance[k - size] ?? 0) * q;
  for (let k = Math.min(size - 1, top); k >= 0; k -= 1) chance[k] = (chance[k] ?? 0) * not;
  crowd.top = top + size;
}

/** Adds an independent crowd. Exact convolution. */
export function addCrowd(crowd: Crowd, other: Crowd): void {
  const before = crowd.chance.slice(0, crowd.top + 1);
  crowd.chance.fill(0, 0, crowd.top + 1);
  for (let i = 0; i < before.length; i += 1) {
    const a = before[i] ?? 0;
    if (a === 0) continue;
    for (let j = 0; j <= other.top; j += 1) crowd.chance[i + j] = (crowd.chance[i + j] ?? 0) + a * (other.chance[j] ?? 0);
  }
  crowd.top += other.top;
}

/** Smallest number that is not exceeded with chance `level`. A hair of rounding is forgiven. */
export function percentile(crowd: Crowd, level: number): number {
  let sum = 0;
  for (let k = 0; k <= crowd.top; k += 1) {
    sum += crowd.chance[k] ?? 0;
    if (sum >= level - 1e-12) return k;
  }
  return crowd.top;
}
