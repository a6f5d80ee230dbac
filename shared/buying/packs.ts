import { Big } from 'big.js';

/** How many of one pack size. */
export interface PackCount {
  readonly count: number;
  readonly size: Big;
}

// Above this many common steps in the largest pack the exact table would be slow to fill; such sizes share no sensible step.
const mostSteps = 400;
const zero = new Big(0);

function commonStep(sizes: readonly Big[]): Big {
  const divisor = (a: Big, b: Big): Big => (b.eq(0) ? a : divisor(b, a.mod(b)));
  return sizes.reduce((step, size) => divisor(step, size), zero);
}

/** Fewest packs of each exact number of steps from 0 to `top`: the count and the size added last; infinity where no packs make it. */
function fewest(steps: readonly number[], top: number): { readonly packs: readonly number[]; readonly last: readonly number[] } {
  const packs = [0];
  const last = [-1];
  for (let total = 1; total <= top; total += 1) {
    let [best, by] = [Number.POSITIVE_INFINITY, -1];
    steps.forEach((step, i) => {
      const before = packs[total - step];
      if (before !== undefined && before + 1 < best) [best, by] = [before + 1, i];
    });
    packs.push(best);
    last.push(by);
  }
  return { packs, last };
}

/**
 * Fewest packs among the totals from the least that covers the need up to `extra` steps more; of those the least total. Exact. With no extra:
 * least waste, then fewest packs. In a best choice fewer than L packs are smaller than the largest (L its steps): any L of them have some
 * that add up to a multiple of L, for which largest packs do with no more pieces. So only the lowest L² steps need the table.
 * One largest pack above the least total there is nothing more to gain: all largest packs reach it with the fewest there can be.
 */
function exactCounts(steps: readonly number[], needed: number, extra: number): number[] {
  const largest = Math.max(...steps);
  const big = steps.indexOf(largest);
  const spare = largest * Math.max(...steps.filter((s) => s < largest), 1);
  const whole = Math.max(0, Math.floor((needed - spare) / largest));
  const rest = needed - whole * largest;
  const top = rest + 2 * largest;
  const table = fewest(steps, top);
  const packsOf = (n: number): number => table.packs[n] ?? Number.POSITIVE_INFINITY;
  let least = rest;
  while (least < top && !Number.isFinite(packsOf(least))) least += 1;
  let total = least;
  for (let n = least + 1; n <= Math.min(top, least + Math.min(extra, largest)); n += 1) if (packsOf(n) < packsOf(total)) total = n;
  const counts = steps.map((_, i) => (i === big ? whole : 0));
  for (let left = total; left > 0;) {
    const by = table.last[left] ?? -1;
    if (by < 0) break;
    counts[by] = (counts[by] ?? 0) + 1;
    left -= steps[by] ?? left;
  }
  return counts;
}

interface Choice { readonly bought: Big; readonly packs: number; readonly counts: readonly PackCount[] }

/** For sizes without a common step: the best of one size filled up with one other. */
function bestPair(sizes: readonly Big[], needed: Big, extra: Big): readonly PackCount[] {
  const choices: Choice[] = [];
  for (const a of sizes) {
    const most = Number(needed.div(a).round(0, Big.roundUp).toString());
    for (let n = Math.max(0, most - 40); n <= most; n += 1) {
      for (const b of sizes) {
        const left = needed.minus(a.times(n));
        const m = left.lte(0) ? 0 : Number(left.div(b).round(0, Big.roundUp).toString());
        choices.push({ bought: a.times(n).plus(b.times(m)), packs: n + m, counts: [{ count: n, size: a }, { count: m, size: b }].filter((p) => p.count > 0) });
      }
    }
  }
  const least = choices.reduce<Big | null>((min, c) => (min === null || c.bought.lt(min) ? c.bought : min), null);
  if (least === null) return [];
  const near = choices.filter((c) => c.bought.lte(least.plus(extra)));
  return near.reduce<Choice | null>((best, c) => (best === null || c.packs < best.packs || (c.packs === best.packs && c.bought.lt(best.bought)) ? c : best), null)?.counts ?? [];
}

/** Pack sizes ready to choose from. */
export interface Sizes {
  /** Above 0, largest first. */
  readonly sizes: readonly Big[];
  /** Largest amount that goes into every size, and the sizes counted in it. */
  readonly step: Big;
  readonly steps: readonly number[];
}

/** Readies pack sizes; sizes of zero are left out. Null when none is left. */
export function readySizes(all: readonly Big[]): Sizes | null {
  const sizes = all.filter((s) => s.gt(0)).toSorted((a, b) => b.cmp(a));
  if (sizes.length === 0) return null;
  const step = commonStep(sizes);
  return { sizes, step, steps: sizes.map((s) => Number(s.div(step).round(0).toString())) };
}

/**
 * Packs that cover `needed` (in the unit of the sizes); largest first. Nothing for a need of zero. With no `extra` the least is left over, and of
 * those choices the fewest packs; with it, the fewest packs of all choices that leave at most `extra` more than the least, and of those the least.
 * @param extra in the unit of the sizes, 0 or more.
 */
export function choosePacks({ sizes, step, steps }: Sizes, needed: Big, extra = zero): readonly PackCount[] {
  if (needed.lte(0)) return [];
  if (Math.max(...steps) > mostSteps) return bestPair(sizes, needed, extra);
  const counts = exactCounts(steps, Number(needed.div(step).round(0, Big.roundUp).toString()), Number(extra.div(step).round(0, Big.roundDown).toString()));
  return sizes.flatMap((size, i) => ((counts[i] ?? 0) > 0 ? [{ count: counts[i] ?? 0, size }] : []));
}
