import type { Direction, Network } from './network';

/** Room for passes over one network: used again and again. */
export class Decoder {
  /** Time in use, minute by minute: what is taken of thing k in minute t stands at `t * things + k`. */
  private readonly used: Int32Array;
  /** Minutes written since the last pass. */
  private dirty = 0;
  private readonly network: Network;

  constructor(network: Network) {
    this.network = network;
    this.used = new Int32Array((network.horizon + 1) * Math.max(1, network.things));
  }

  /**
   * Serial generation: each activity of the list as early as the rules from those before it and the things left allow.
   * @param list an order in which every rule of `direction` goes from left to right. @param starts filled in. @returns the end of the last activity, in minutes as `direction` counts them.
   * @throws RangeError when an activity does not fit within the horizon.
   */
  pass(direction: Direction, list: Int32Array, starts: Int32Array): number {
    const { things, durations, demands, capacities, horizon } = this.network;
    const { at, from, least, release } = direction;
    const { used } = this;
    used.fill(0, 0, this.dirty * things);
    let makespan = 0;
    for (let p = 0; p < list.length; p += 1) {
      const i = list[p] ?? 0;
      const length = durations[i] ?? 0;
      let start = release[i] ?? 0;
      for (let e = at[i] ?? 0, last = at[i + 1] ?? 0; e < last; e += 1) {
        const bound = (starts[from[e] ?? 0] ?? 0) + (least[e] ?? 0);
        if (bound > start) start = bound;
      }
      const own = i * things;
      // Looks from the last minute back: a clash there moves the start furthest.
      let clear = start;
      search: for (let t = start + length - 1; t >= clear; t -= 1) {
        if (t >= horizon) {
          this.dirty = horizon;
          throw new RangeError('the horizon is too short');
        }
        const row = t * things;
        for (let k = 0; k < things; k += 1) {
          if ((used[row + k] ?? 0) + (demands[own + k] ?? 0) > (capacities[k] ?? 0)) {
            // From here to the old end all is free; only what lies beyond it is new.
            clear = start + length;
            start = t + 1;
            t = start + length;
            continue search;
          }
        }
      }
      starts[i] = start;
      const end = start + length;
      for (let k = 0; k < things; k += 1) {
        const amount = demands[own + k] ?? 0;
        if (amount > 0) for (let c = start * things + k, stop = end * things; c < stop; c += things) used[c] = (used[c] ?? 0) + amount;
      }
      if (end > makespan) makespan = end;
    }
    this.dirty = makespan;
    return makespan;
  }
}
