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

interface Choice {
  readonly counts: readonly number[];
  readonly total: number;
  readonly packs: number;
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
 * Least waste, then fewest packs, exact. In a best choice fewer than L packs are smaller than the largest (L its steps): any L of them have some
 * that add up to a multiple of L, for which largest packs do with no more pieces. So only the lowest L² steps need the table.
 */
function exactChoice(steps: readonly number[], needed: number): Choice {
  const largest = Math.max(...steps);
  const big = steps.indexOf(largest);
  const spare = largest * Math.max(...steps.filter((s) => s < largest), 1);
  const whole = Math.max(0, Math.floor((needed - spare) / largest));
  const rest = needed - whole * largest;
  const top = rest + largest;
  const table = fewest(steps, top);
  let total = rest;
  while (total < top && !Number.isFinite(table.packs[total] ?? Number.POSITIVE_INFINITY)) total += 1;
  const counts = steps.map((_, i) => (i === big ? whole : 0));
  for (let left = total; left > 0;) {
    const by = table.last[left] ?? -1;
    if (by < 0) break;
    counts[by] = (counts[by] ?? 0) + 1;
    left -= steps[by] ?? left;
  }
  return { counts, total: total + whole * largest, packs: counts.reduce((a, b) => a + b, 0) };
}

/** For sizes without a common step: the best of one size filled up with one other. */
function bestPair(sizes: readonly Big[], needed: Big): PackCount[] {
  let best: { readonly bought: Big; readonly packs: number; readonly counts: PackCount[] } | null = null;
  for (const a of sizes) {
    const most = Number(needed.div(a).round(0, Big.roundUp).toString());
    for (let n = Math.max(0, most - 40); n <= most; n += 1) {
      for (const b of sizes) {
        const left = needed.minus(a.times(n));
        const m = left.lte(0) ? 0 : Number(left.div(b).round(0, Big.roundUp).toString());
        const bought = a.times(n).plus(b.times(m));
        const packs = n + m;
        if (best === null || bought.lt(best.bought) || (bought.eq(best.bought) && packs < best.packs)) {
          best = { bought, packs, counts: [{ count: n, size: a }, { count: m, size: b }].filter((p) => p.count > 0) };
        }
      }
    }
  }
  return best?.counts ?? [];
}

/**
 * Packs that cover `needed` with the least left over, and of those the fewest; largest first. Nothing for a need of zero.
 * @param sizes pack sizes above 0, all in the unit of `needed`.
 */
export function choosePacks(sizes: readonly Big[], needed: Big): PackCount[] {
  const usable = sizes.filter((s) => s.gt(0)).toSorted((a, b) => b.cmp(a));
  if (needed.lte(0) || usable.length === 0) return [];
  const step = commonStep(usable);
  const steps = usable.map((s) => Number(s.div(step).round(0).toString()));
  if (Math.max(...steps) > mostSteps) return bestPair(usable, needed);
  const { counts } = exactChoice(steps, Number(needed.div(step).round(0, Big.roundUp).toString()));
  return usable.flatMap((size, i) => ((counts[i] ?? 0) > 0 ? [{ count: counts[i] ?? 0, size }] : []));
}
