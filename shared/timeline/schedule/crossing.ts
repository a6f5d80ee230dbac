import type { Passes, Side, Timed } from './pass';
import { pick, type Random } from './random';

/** Settings found by trying on published instances, each the mean of twenty start numbers; see the benchmark. */
const share = { least: 0.1, most: 0.5 };
const looks = 3;
const inside = 0.4;
const nearlyTwins = 2;
const change = { often: 0.3, few: 0.05, many: 0.1, moves: 6 };

/**
 * Makes the order of a child from two schedules of the other side: a stretch of the first keeps its order, all that lies before it and
 * after it is ordered as in the second, or the other way round. The stretch is the busiest of three taken at random. Twins are shaken.
 * Source: the idea of the peak crossover, Valls, Ballestín and Quintanilla 2008, in the two populations of Debels and Vanhoucke 2005 (from memory).
 */
export class Crossing {
  private readonly passes: Passes;
  private readonly first: Int32Array;
  private readonly second: Int32Array;
  private readonly key: Int32Array;
  private readonly load: Float64Array;
  private readonly weight: Float64Array;

  constructor(passes: Passes) {
    const { activities, things, demands, capacities, horizon } = passes.network;
    this.passes = passes;
    this.first = new Int32Array(activities);
    this.second = new Int32Array(activities);
    this.key = new Int32Array(activities);
    this.load = new Float64Array(horizon + 2);
    this.weight = new Float64Array(activities);
    for (let i = 0; i < activities; i += 1) {
      for (let k = 0; k < things; k += 1) this.weight[i] = (this.weight[i] ?? 0) + (demands[i * things + k] ?? 0) / Math.max(1, capacities[k] ?? 0);
    }
  }

  /** Fills the list of the passes for `side`. */
  fill(side: Side, a: Timed, b: Timed, random: Random): void {
    const { first, second, key, passes } = this;
    const { durations } = passes.network;
    let apart = 0;
    for (let i = 0; i < key.length; i += 1) {
      const length = durations[i] ?? 0;
      const [one, two] = [a.makespan - (a.starts[i] ?? 0) - length, b.makespan - (b.starts[i] ?? 0) - length];
      first[i] = one;
      second[i] = two;
      apart += Math.abs(one - two);
    }
    const long = Math.floor(a.makespan * (share.least + random() * (share.most - share.least)));
    const from = this.busy(a.makespan, long, random);
    const own = random() >= inside;
    const group = Math.max(a.makespan, b.makespan) + 1;
    let most = 0;
    for (let i = 0; i < key.length; i += 1) {
      const at = first[i] ?? 0;
      const part = at < from ? 0 : at <= from + long ? 1 : 2;
      const k = part * group + ((part === 1) === own ? at : second[i] ?? 0);
      key[i] = k;
      if (k > most) most = k;
    }
    passes.orderBy(side, key, most);
    const twins = apart < nearlyTwins * key.length;
    if (twins || random() < change.often) this.shake(side, twins, random);
  }

  /** Start of the busiest of a few stretches of this length. */
  private busy(makespan: number, long: number, random: Random): number {
    const { load, first, weight } = this;
    const { durations } = this.passes.network;
    load.fill(0, 0, makespan + 1);
    for (let i = 0; i < first.length; i += 1) {
      const start = first[i] ?? 0;
      const stop = Math.min(makespan, start + (durations[i] ?? 0));
      for (let t = start; t < stop; t += 1) load[t] = (load[t] ?? 0) + (weight[i] ?? 0);
    }
    for (let t = 1; t <= makespan; t += 1) load[t] = (load[t] ?? 0) + (load[t - 1] ?? 0);
    let [best, most] = [0, -1];
    for (let k = 0; k < looks; k += 1) {
      const at = pick(random, makespan - long + 1);
      const work = (load[at + long] ?? 0) - (load[at] ?? 0);
      if (work > most) [best, most] = [at, work];
    }
    return best;
  }

  /** Swaps neighbours where no rule stands between them; twins also have a few activities moved far forward. */
  private shake(side: Side, twins: boolean, random: Random): void {
    const { passes } = this;
    const { list } = passes;
    const chance = twins ? change.many : change.few;
    for (let p = 0; p + 1 < list.length; p += 1) {
      if (random() >= chance) continue;
      const [a, b] = [list[p] ?? 0, list[p + 1] ?? 0];
      if (passes.mustPrecede(side, a, b)) continue;
      list[p] = b;
      list[p + 1] = a;
    }
    for (let k = twins ? 0 : change.moves; k < change.moves; k += 1) {
      const at = pick(random, list.length);
      const moved = list[at] ?? 0;
      let low = at;
      while (low > 0 && !passes.mustPrecede(side, list[low - 1] ?? 0, moved)) low -= 1;
      const to = low + pick(random, at - low + 1);
      list.copyWithin(to + 1, to, at);
      list[to] = moved;
    }
  }
}
