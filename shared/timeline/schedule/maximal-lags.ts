import { Distances } from './distances';
import type { ScheduleProblem, Starts } from './types';

/** Answer to a problem that may hold maximal lags. */
export type MaximalLagsAnswer =
  | { readonly kind: 'found'; readonly starts: Starts; readonly makespan: number; /** True when no shorter one exists. */ readonly optimal: boolean; readonly steps: number }
  | { /** Proven: no schedule keeps all rules. */ readonly kind: 'impossible'; readonly steps: number }
  | { /** The steps ran out before anything was found or proven. */ readonly kind: 'unknown'; readonly steps: number };

class Enumeration {
  steps = 0;
  best: Starts | null = null;
  bound: number;
  private readonly problem: ScheduleProblem;
  private readonly most: number;
  /** Pairs that can never run at once. */
  private readonly apart: readonly (readonly [number, number])[];
  private readonly firstOnly: boolean;

  constructor(problem: ScheduleProblem, most: number, firstOnly: boolean) {
    this.problem = problem;
    this.most = most;
    this.firstOnly = firstOnly;
    this.bound = Number.MAX_SAFE_INTEGER;
    const { durations, demands, capacities } = problem;
    const clash = (i: number, j: number): boolean => this.length(i) > 0 && this.length(j) > 0 && capacities.some((c, k) => (demands[i]?.[k] ?? 0) + (demands[j]?.[k] ?? 0) > c);
    this.apart = durations.flatMap((_, i) => durations.flatMap((__, j) => (i < j && clash(i, j) ? [[i, j] as const] : [])));
  }

  private length(i: number): number {
    return this.problem.durations[i] ?? 0;
  }

  /** Minutes from the start of each activity that everything after it still needs. */
  private tails(at: Distances): number[] {
    const n = at.size - 1;
    return Array.from({ length: n }, (_, i) => {
      let tail = this.length(i);
      for (let j = 0; j < n; j += 1) tail = Math.max(tail, at.between(i, j) + this.length(j));
      return tail;
    });
  }

  /** Orders every pair that only one order is left for; false when none is, or nothing shorter than the best can come of it. */
  private settlePairs(at: Distances): boolean {
    for (let again = true; again;) {
      again = false;
      const tails = this.tails(at);
      for (let i = 0; i < tails.length; i += 1) if (at.earliest(i) + (tails[i] ?? 0) >= this.bound) return false;
      const canBeFirst = (a: number, b: number): boolean => at.between(b, a) <= -this.length(a) && at.earliest(a) + this.length(a) + (tails[b] ?? 0) < this.bound;
      for (const [i, j] of this.apart) {
        if (at.between(i, j) >= this.length(i) || at.between(j, i) >= this.length(j)) continue;
        const [ij, ji] = [canBeFirst(i, j), canBeFirst(j, i)];
        if (ij && ji) continue;
        if (!ij && !ji) return false;
        again = true;
        if (!(ij ? at.add(i, j, this.length(i)) : at.add(j, i, this.length(j)))) return false;
      }
    }
    return true;
  }

  /** The first minute at which the earliest starts want too much, and a smallest set of activities that do; null when they fit. */
  private clashAt(at: Distances): readonly number[] | null {
    const { durations, demands, capacities } = this.problem;
    const start = durations.map((_, i) => at.earliest(i));
    const order = durations.map((_, i) => i).filter((i) => this.length(i) > 0).sort((a, b) => (start[a] ?? 0) - (start[b] ?? 0) || a - b);
    for (const one of order) {
      const t = start[one] ?? 0;
      const running = order.filter((i) => (start[i] ?? 0) <= t && (start[i] ?? 0) + this.length(i) > t);
      for (let k = 0; k < capacities.length; k += 1) {
        const wants = (list: readonly number[]): number => list.reduce((sum, i) => sum + (demands[i]?.[k] ?? 0), 0);
        if (wants(running) <= (capacities[k] ?? 0)) continue;
        // Largest first keeps the set small; then whatever is not needed for the clash is left out.
        let set = running.filter((i) => (demands[i]?.[k] ?? 0) > 0).sort((a, b) => (demands[b]?.[k] ?? 0) - (demands[a]?.[k] ?? 0) || a - b);
        for (const i of set.toReversed()) {
          const without = set.filter((x) => x !== i);
          if (wants(without) > (capacities[k] ?? 0)) set = without;
        }
        return set;
      }
    }
    return null;
  }

  /** Goes through all ways to part a clash; true when the search may end. */
  run(at: Distances): boolean {
    this.steps += 1;
    if (this.steps > this.most) return true;
    if (!this.settlePairs(at)) return false;
    const clash = this.clashAt(at);
    if (clash === null) {
      this.best = Int32Array.from({ length: at.size - 1 }, (_, i) => at.earliest(i));
      this.bound = this.best.reduce((most, start, i) => Math.max(most, start + this.length(i)), 0);
      return this.firstOnly;
    }
    const ways = clash.flatMap((i) => clash.flatMap((j) => (i === j ? [] : [{ i, j, moves: at.earliest(i) + this.length(i) - at.earliest(j) }])));
    ways.sort((a, b) => a.moves - b.moves || a.i - b.i || a.j - b.j);
    for (const { i, j } of ways) {
      const next = at.copy();
      if (next.add(i, j, this.length(i)) && this.run(next)) return true;
    }
    return false;
  }
}

/**
 * Schedules activities whose rules may hold maximal lags, or proves that nothing can: clashes are parted one by one in every way, with
 * longest paths kept after each (branch and bound). Exact when the steps suffice; for some dozen activities.
 * @param most steps. @param firstOnly ends at the first schedule found.
 * Source: the enumeration of Bartusch, Möhring and Radermacher 1988, with forced pairs of De Reyck and Herroelen 1998 (both from memory).
 */
export function searchWithMaximalLags(problem: ScheduleProblem, most: number, firstOnly = false): MaximalLagsAnswer {
  const { demands, capacities, durations } = problem;
  const tooMuch = demands.some((row, i) => (durations[i] ?? 0) > 0 && row.some((amount, k) => amount > (capacities[k] ?? 0)));
  const root = tooMuch ? null : Distances.of(problem);
  if (root === null) return { kind: 'impossible', steps: 0 };
  const search = new Enumeration(problem, most, firstOnly);
  search.run(root);
  const ended = search.steps <= most;
  if (search.best !== null) return { kind: 'found', starts: search.best, makespan: search.bound, optimal: ended && !firstOnly, steps: search.steps };
  return { kind: ended ? 'impossible' : 'unknown', steps: search.steps };
}
