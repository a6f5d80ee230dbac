import type { ScheduleProblem } from './types';

/** The rules as one pass reads them, forward or backward in time. Typed arrays only: a pass makes no garbage. */
export interface Direction {
  /** Rules into activity i stand from `at[i]` to `at[i + 1]`. */
  readonly at: Int32Array;
  readonly from: Int32Array;
  readonly least: Int32Array;
  /** Earliest start as this pass counts time. */
  readonly release: Int32Array;
  /** True when an order by time of the other direction is always an order of the rules here. */
  readonly plain: boolean;
}

/** A problem made ready for passes. */
export interface Network {
  readonly activities: number;
  readonly things: number;
  /** Minutes within which every schedule made here lies. */
  readonly horizon: number;
  readonly durations: Int32Array;
  /** Demands of activity i from `i * things` on. */
  readonly demands: Int32Array;
  readonly capacities: Int32Array;
  readonly forward: Direction;
  /** Time runs backward: a start here is the horizon less an end there. */
  readonly backward: Direction;
}

/** Activities in an order in which every rule goes from left to right; null when rules go in a circle, as they do with a maximal lag. */
export function orderOfRules({ durations, lags }: ScheduleProblem): Int32Array | null {
  const n = durations.length;
  const open = new Int32Array(n);
  const next: number[][] = Array.from({ length: n }, () => []);
  for (const { from, to } of lags) {
    open[to] = (open[to] ?? 0) + 1;
    next[from]?.push(to);
  }
  const order = new Int32Array(n);
  let done = 0;
  for (let i = 0; i < n; i += 1) if (open[i] === 0) order[done++] = i;
  for (let k = 0; k < done; k += 1) {
    for (const to of next[order[k] ?? 0] ?? []) {
      open[to] = (open[to] ?? 0) - 1;
      if (open[to] === 0) order[done++] = to;
    }
  }
  return done === n ? order : null;
}

/** Minutes that surely hold every schedule: everything one after the other, each after its own earliest start. */
export const horizonOf = ({ durations, lags, earliest }: ScheduleProblem): number =>
  durations.reduce((sum, minutes, i) => sum + minutes + Math.max(0, earliest?.[i] ?? 0), 0) + lags.reduce((sum, l) => sum + Math.max(0, l.least - (durations[l.from] ?? 0)), 0) + 1;

function direction(n: number, rules: readonly { readonly from: number; readonly to: number; readonly least: number }[], release: Int32Array, plain: boolean): Direction {
  const at = new Int32Array(n + 1);
  for (const { to } of rules) at[to + 1] = (at[to + 1] ?? 0) + 1;
  for (let i = 0; i < n; i += 1) at[i + 1] = (at[i + 1] ?? 0) + (at[i] ?? 0);
  const next = at.slice();
  const from = new Int32Array(rules.length);
  const least = new Int32Array(rules.length);
  for (const rule of rules) {
    const k = next[rule.to] ?? 0;
    next[rule.to] = k + 1;
    from[k] = rule.from;
    least[k] = rule.least;
  }
  return { at, from, least, release, plain };
}

/**
 * Makes a problem ready. Rules must not go in a circle.
 * @param latestEnds the backward pass keeps to them; ends of the horizon when left out.
 * @throws RangeError when an activity wants more of a thing than there is.
 */
export function networkOf(problem: ScheduleProblem, horizon = horizonOf(problem), latestEnds?: ArrayLike<number>): Network {
  const { capacities, lags } = problem;
  const [n, things] = [problem.durations.length, capacities.length];
  const demands = new Int32Array(n * things);
  problem.demands.forEach((row, i) => row.forEach((amount, k) => {
    if (amount > (capacities[k] ?? 0)) throw new RangeError(`activity ${i} wants ${amount} of thing ${k}, there are ${capacities[k] ?? 0}`);
    demands[i * things + k] = amount;
  }));
  const durations = Int32Array.from(problem.durations);
  const lengthOf = (i: number): number => durations[i] ?? 0;
  const back = lags.map(({ from, to, least }) => ({ from: to, to: from, least: least + lengthOf(to) - lengthOf(from) }));
  const plain = [...lags, ...back].every((r) => r.least >= 0);
  return {
    activities: n, things, horizon, durations, demands, capacities: Int32Array.from(capacities),
    forward: direction(n, lags, Int32Array.from(problem.durations, (_, i) => problem.earliest?.[i] ?? 0), plain),
    backward: direction(n, back, Int32Array.from(problem.durations, (_, i) => Math.max(0, horizon - (latestEnds?.[i] ?? horizon))), plain),
  };
}
