import { Decoder } from './decode';
import { horizonOf, networkOf, orderOfRules, type Direction, type Network } from './network';
import { Sorter } from './sorter';
import type { ScheduleProblem } from './types';

/** A schedule of one direction of time. */
export interface Timed {
  starts: Int32Array;
  makespan: number;
}

/** 0: forward in time; 1: backward. */
export type Side = 0 | 1;

/** All that passes over one problem share; made once, used for every schedule. */
export class Passes {
  readonly network: Network;
  /** Schedules generated so far. */
  count = 0;
  private readonly decoder: Decoder;
  private readonly sorter: Sorter;
  private readonly directions: readonly [Direction, Direction];
  private readonly bases: readonly [Int32Array, Int32Array];
  private readonly key: Int32Array;
  /** The order of the next pass. */
  readonly list: Int32Array;

  /** @throws RangeError when the rules go in a circle (maximal lags have a search of their own) or an activity wants more than there is. */
  constructor(problem: ScheduleProblem) {
    const order = orderOfRules(problem);
    if (order === null) throw new RangeError('rules go in a circle');
    const horizon = horizonOf(problem);
    this.network = networkOf(problem, horizon);
    this.decoder = new Decoder(this.network);
    this.sorter = new Sorter(3 * horizon + 6);
    this.directions = [this.network.forward, this.network.backward];
    this.bases = [order, order.toReversed()];
    this.key = new Int32Array(this.network.activities);
    this.list = new Int32Array(this.network.activities);
  }

  /** Room for one schedule. */
  room(): Timed {
    return { starts: new Int32Array(this.network.activities), makespan: Number.MAX_SAFE_INTEGER };
  }

  /** Rules into an activity, as `side` reads them: true when `before` must come before `after`. */
  mustPrecede(side: Side, before: number, after: number): boolean {
    const { at, from } = this.directions[side];
    for (let e = at[after] ?? 0, last = at[after + 1] ?? 0; e < last; e += 1) if (from[e] === before) return true;
    return false;
  }

  /** Orders the list by a key; equal keys by the rules. @param most highest key, below three horizons. */
  orderBy(side: Side, key: Int32Array, most: number): void {
    this.sorter.sort(this.bases[side], key, most, this.list);
    if (!this.directions[side].plain) this.repair(side);
  }

  /** Orders the list for `side` by the ends of a schedule of the other side, latest first: the order in which justification takes them. */
  orderFrom(side: Side, { starts, makespan }: Timed): void {
    const { key, network } = this;
    for (let i = 0; i < key.length; i += 1) key[i] = makespan - (starts[i] ?? 0) - (network.durations[i] ?? 0);
    this.orderBy(side, key, makespan);
  }

  /** Generates a schedule from the list into `room`. */
  generate(side: Side, room: Timed): Timed {
    this.count += 1;
    room.makespan = this.decoder.pass(this.directions[side], this.list, room.starts);
    return room;
  }

  /** Puts what a rule wants first before what waits for it, where start-to-start lags let times say otherwise. */
  private repair(side: Side): void {
    const { at, from } = this.directions[side];
    const wanted = this.list.slice();
    const seen = new Uint8Array(wanted.length);
    let done = 0;
    const take = (i: number): void => {
      if (seen[i] === 1) return;
      seen[i] = 1;
      for (let e = at[i] ?? 0, last = at[i + 1] ?? 0; e < last; e += 1) take(from[e] ?? 0);
      this.list[done++] = i;
    };
    for (const i of wanted) take(i);
  }
}
