import type { ScheduleProblem } from './types';

/** Stands for "no rule": far below any lag, far above the smallest number there is. */
const none = -1e8;

/** Longest paths between all activities, and node `size - 1`, the start of the clock; kept closed under every rule added. */
export class Distances {
  readonly size: number;
  private readonly d: Int32Array;

  private constructor(size: number, d: Int32Array) {
    this.size = size;
    this.d = d;
  }

  /** All rules of a problem; null when they contradict each other. */
  static of(problem: ScheduleProblem): Distances | null {
    const n = problem.durations.length;
    const made = new Distances(n + 1, new Int32Array((n + 1) ** 2).fill(none));
    for (let i = 0; i <= n; i += 1) made.d[i * (n + 1) + i] = 0;
    for (let i = 0; i < n; i += 1) {
      if (!made.add(n, i, problem.earliest?.[i] ?? 0)) return null;
      const end = problem.latest?.[i];
      if (end !== undefined && Number.isFinite(end) && !made.add(i, n, (problem.durations[i] ?? 0) - end)) return null;
    }
    return problem.lags.every(({ from, to, least }) => made.add(from, to, least)) ? made : null;
  }

  /** A copy that may be changed alone. */
  copy(): Distances {
    return new Distances(this.size, this.d.slice());
  }

  /** Least minutes from start to start; very low when no rule says anything. */
  between(from: number, to: number): number {
    return this.d[from * this.size + to] ?? none;
  }

  /** Earliest start by the rules alone. */
  earliest(i: number): number {
    return this.between(this.size - 1, i);
  }

  /** Adds a rule and all that follows from it; false when it contradicts what is there, which leaves these distances of no use. */
  add(from: number, to: number, least: number): boolean {
    const { d, size } = this;
    if (this.between(from, to) >= least) return true;
    if (this.between(to, from) + least > 0) return false;
    const row = to * size;
    for (let i = 0; i < size; i += 1) {
      const head = (d[i * size + from] ?? none) + least;
      if (head < none / 2) continue;
      for (let j = 0; j < size; j += 1) {
        const tail = d[row + j] ?? none;
        if (tail > none / 2 && head + tail > (d[i * size + j] ?? none)) d[i * size + j] = head + tail;
      }
    }
    return true;
  }
}
