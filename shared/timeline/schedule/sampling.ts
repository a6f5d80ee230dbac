import type { Passes } from './pass';
import type { Random } from './random';
import type { ScheduleProblem, Windows } from './types';

/** How often the latest start rules a sample, else the latest end. */
const byLatestStart = 0.8;

/**
 * Random orders that like to take first what must be done first: chance in proportion to the regret of waiting.
 * Source: regret-based biased random sampling, Drexl 1991; Kolisch 1996 (from memory).
 */
export class Sampler {
  private readonly weights: Float64Array;
  private readonly ready: Int32Array;
  private readonly left: Int32Array;
  private readonly waits: Int32Array;
  private readonly next: readonly (readonly number[])[];
  private readonly latestEnd: Int32Array;
  private readonly latestStart: Int32Array;

  constructor({ durations, lags }: ScheduleProblem, windows: Windows) {
    const n = durations.length;
    this.weights = new Float64Array(n);
    this.ready = new Int32Array(n);
    this.left = new Int32Array(n);
    this.waits = new Int32Array(n);
    this.latestStart = windows.latestStart;
    this.latestEnd = Int32Array.from(windows.latestStart, (s, i) => s + (durations[i] ?? 0));
    const next: number[][] = Array.from({ length: n }, () => []);
    for (const { from, to } of lags) {
      next[from]?.push(to);
      this.waits[to] = (this.waits[to] ?? 0) + 1;
    }
    this.next = next;
  }

  /** Fills the list of the passes with a random order for a forward pass. */
  fill(passes: Passes, random: Random): void {
    const { weights, ready, left, next } = this;
    const due = random() < byLatestStart ? this.latestStart : this.latestEnd;
    left.set(this.waits);
    let open = 0;
    for (let i = 0; i < left.length; i += 1) if (left[i] === 0) ready[open++] = i;
    for (let p = 0; open > 0; p += 1) {
      let last = Number.MIN_SAFE_INTEGER;
      for (let k = 0; k < open; k += 1) last = Math.max(last, due[ready[k] ?? 0] ?? 0);
      let sum = 0;
      for (let k = 0; k < open; k += 1) sum += weights[k] = last - (due[ready[k] ?? 0] ?? 0) + 1;
      let [at, chance] = [0, random() * sum - (weights[0] ?? 0)];
      while (chance > 0 && at < open - 1) chance -= weights[++at] ?? 0;
      const chosen = ready[at] ?? 0;
      ready[at] = ready[--open] ?? 0;
      passes.list[p] = chosen;
      for (const to of next[chosen] ?? []) {
        left[to] = (left[to] ?? 0) - 1;
        if (left[to] === 0) ready[open++] = to;
      }
    }
  }
}
