import { freshPlan, portionMinutes, solve, waitingOf, type FryProblem } from '../../../shared/frying';
import { proven, solver } from './milp';

/** A small repeatable source of numbers 0 up to, not with, 1 (linear congruence of Numerical Recipes, from memory). */
function numbers(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4_294_967_296;
  };
}

/** A kitchen and an hour of guests, some of them more than the pans can serve. */
export function instance(start: number): FryProblem {
  const next = numbers(start);
  const between = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  for (let i = 0; i < 5; i += 1) next();
  const pans = between(1, 2);
  const fry = between(3, 6);
  const hold = between(6, 16);
  const load = between(6, 14);
  const horizon = between(24, 42);
  const busy = (load * pans * horizon) / (fry + 1);
  const total = Math.max(3, Math.round(busy * (0.25 + 0.6 * next())));
  const peak = between(0, horizon - 1);
  const demand = Array.from({ length: horizon }, () => 0);
  for (let i = 0; i < total; i += 1) {
    const at = next() < 0.4 ? Math.min(horizon - 1, Math.max(0, peak + between(-5, 5))) : between(0, horizon - 1);
    demand[at] = (demand[at] ?? 0) + 1;
  }
  const blocked = next() < 0.3 ? between(100, 100 + horizon) : null;
  return {
    wanted: portionMinutes(demand, 100), load, fry, cycle: fry + between(0, 2), hold, lead: 0, earliest: -Infinity, pans,
    free: (t) => pans - (blocked !== null && t >= blocked && t < blocked + 6 ? 1 : 0),
  };
}

/** How our answers stand to the solver's over some problems. Times in milliseconds, summed. */
export interface Comparison {
  readonly problems: number;
  readonly differences: readonly string[];
  readonly short: number;
  /** Problems without shortage on which the solver proved the least waiting. */
  readonly waitingProven: number;
  readonly oursMs: number;
  readonly solverMs: number;
}

/** Solves problems with both; any difference in unmet portions, batches or (on one problem of `every`, slow for the solver) least waiting is named. */
export async function againstSolver(problems: number, start: number, every: number): Promise<Comparison> {
  const highs = await solver();
  const differences: string[] = [];
  let [short, waitingProven, oursMs, solverMs] = [0, 0, 0, 0];
  for (let i = 0; i < problems; i += 1) {
    const p = { ...instance(start + i * 7919), earliest: 0 };
    const t0 = performance.now();
    const answer = solve(p, 3_000_000);
    oursMs += performance.now() - t0;
    const more = Math.floor(i / every) % 2;
    const t1 = performance.now();
    const best = proven(highs, p, i % every === 0, more);
    solverMs += performance.now() - t1;
    if (best.unmet > 0) short += 1;
    if (!answer.exact || answer.unmet.length !== best.unmet) differences.push(`${start + i * 7919}: unmet ${answer.unmet.length}, proven ${best.unmet}`);
    if (answer.batches.length !== best.batches) differences.push(`${start + i * 7919}: batches ${answer.batches.length}, proven ${best.batches}`);
    if (best.waiting === null) continue;
    waitingProven += 1;
    // The solver may use up to so many batches more; the planner takes exactly so many, where there are portions enough for them.
    const t2 = performance.now();
    const plans = Array.from({ length: more + 1 }, (_, n) => freshPlan(p, { more: n, small: 0, dear: 0, width: Infinity, effort: Infinity })).filter((x) => x !== null);
    oursMs += performance.now() - t2;
    const waiting = Math.min(...plans.map((x) => waitingOf(p, x.batches)));
    if (!plans.every((x) => x.exact) || waiting !== best.waiting) differences.push(`${start + i * 7919}: waiting ${waiting} with ${more} more, proven ${best.waiting}`);
  }
  return { problems, differences, short, waitingProven, oursMs, solverMs };
}
