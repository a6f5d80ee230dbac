import { freshest } from './freshness';
import { latestDrop } from './latest-drop';
import { countUpTo, type FryBatch, type FryProblem } from './problem';

/** Where a problem without a solution first fails: the portion whose batch cannot be put in early enough. */
export interface Infeasible {
  readonly portion: number;
}

/** What no plan without empty batches goes beyond; together themselves the plan with the fewest batches. */
export interface Bounds {
  /** ends[j]: most portions that batches 0..j can have served in any plan. */
  readonly ends: readonly number[];
  /** drops[j]: latest put-in of batch j in any plan. */
  readonly drops: readonly number[];
}
interface Moving extends Bounds {
  readonly ends: number[];
  readonly drops: number[];
}

/**
 * The plan with provably fewest batches that serves every portion within its hold, each batch put in as late as possible; or where it fails.
 *
 * Greatest fixpoint of a monotone operator (Knaster-Tarski). A portion wanted at t may come from a lift in [t - hold, t - lead]; all these
 * windows have equal length, so first made, first eaten is optimal and batch j serves a consecutive run of portions. `ends` and `drops`
 * start above, and every step below keeps them at or above the values of EVERY plan without empty batches:
 *  - a batch ends no further than its load beyond the one before, nor than what is still within hold of its lift;
 *  - a batch is lifted no later than `lead` before its first portion is wanted, no later than the next batch, and only while a pan is free
 *    (`latestDrop`, monotone in the later batches, also with minutes blocked by other dishes).
 * At the fixpoint the bounds are themselves a plan; its prefixes are the largest possible, so no plan has fewer batches.
 * The lead only moves the latest lift; hold still counts from the lift to real eating, so the proof holds unchanged for the shifted problem.
 */
export function fewestBatches(problem: FryProblem): readonly FryBatch[] | Infeasible {
  const bounds = boundsOf(problem);
  return 'portion' in bounds ? bounds : freshest(problem, bounds.drops);
}

/** The greatest fixpoint itself; or where no plan can be. See `fewestBatches`. */
export function boundsOf(problem: FryProblem): Bounds | Infeasible {
  const bounds: Moving = { ends: [], drops: [] };
  for (;;) {
    append(problem, bounds);
    const changed = tightenDrops(problem, bounds);
    const late = bounds.drops.findIndex((s) => s < problem.earliest || s === -Infinity);
    if (late >= 0) return { portion: bounds.ends[late - 1] ?? 0 };
    const cut = tightenEnds(problem, bounds);
    const empty = bounds.ends.findIndex((e, j) => e < j + 1);
    if (empty >= 0) return { portion: bounds.ends[empty - 1] ?? 0 };
    if (!changed && !cut && (bounds.ends.at(-1) ?? 0) >= problem.wanted.length) return bounds;
  }
}

/** True when `fewestBatches` found a plan. */
export const isPlan = (answer: readonly FryBatch[] | Infeasible): answer is readonly FryBatch[] => Array.isArray(answer);

/** Blocks after the last one until every portion is covered. */
function append(p: FryProblem, b: Moving): void {
  let done = b.ends.at(-1) ?? 0;
  while (done < p.wanted.length) {
    const first = p.wanted[done] ?? 0;
    done = Math.min(done + p.load, countUpTo(p.wanted, first - p.lead + p.hold));
    b.ends.push(done);
    b.drops.push(Infinity);
  }
}

/** Step 1, from the last batch to the first. True when a bound moved. */
function tightenDrops(p: FryProblem, b: Moving): boolean {
  let changed = false;
  for (let j = b.drops.length - 1; j >= 0; j -= 1) {
    const firstWanted = p.wanted[b.ends[j - 1] ?? 0] ?? Infinity;
    const bound = Math.min(b.drops[j] ?? Infinity, firstWanted - p.lead - p.fry, b.drops[j + 1] ?? Infinity);
    const drop = latestDrop(p, b.drops, j, bound);
    if (drop !== b.drops[j]) changed = true;
    b.drops[j] = drop;
  }
  return changed;
}

/** Step 2, forward by load and hold, then backward so that no later batch is empty. True when a bound moved. */
function tightenEnds(p: FryProblem, b: Moving): boolean {
  let changed = false;
  const set = (j: number, value: number): void => {
    if (value < (b.ends[j] ?? 0)) {
      b.ends[j] = value;
      changed = true;
    }
  };
  for (let j = 0; j < b.ends.length; j += 1) {
    set(j, Math.min((b.ends[j - 1] ?? 0) + p.load, countUpTo(p.wanted, (b.drops[j] ?? 0) + p.fry + p.hold)));
  }
  for (let j = b.ends.length - 2; j >= 0; j -= 1) set(j, (b.ends[j + 1] ?? 0) - 1);
  return changed;
}
