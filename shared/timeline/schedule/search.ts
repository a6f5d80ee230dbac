import { Crossing } from './crossing';
import { justified, serial, windowsOrThrow } from './first-answer';
import { lowerBound } from './lower-bound';
import { Passes, type Side, type Timed } from './pass';
import { pick, randomFrom, type Random } from './random';
import { Sampler } from './sampling';
import type { Found, ScheduleProblem } from './types';

/** Schedules kept on each side, samples made for each of them, generations without gain after which all but the best begin anew, chance that a worse child is kept. */
const house = { kept: 18, samples: 3, idle: 60, lenient: 0.05 };

/** Told each time a better schedule is found, with the number of schedules generated until then. */
export type Better = (makespan: number, schedules: number) => void;

class Search {
  readonly passes: Passes;
  best: Timed;
  private readonly bound: number;
  private readonly released: boolean;
  private readonly sampler: Sampler;
  private readonly crossing: Crossing;
  private readonly random: Random;
  private readonly budget: number;
  private readonly told: Better;
  private readonly sides: [Timed[], Timed[]] = [[], []];
  private spare: Timed;
  private gained = false;

  constructor(problem: ScheduleProblem, startNumber: number, budget: number, told: Better) {
    this.passes = new Passes(problem);
    const windows = windowsOrThrow(problem, this.passes.network.horizon);
    this.bound = lowerBound(problem, windows);
    this.sampler = new Sampler(problem, windows);
    this.crossing = new Crossing(this.passes);
    this.released = problem.earliest?.some((t) => t > 0) ?? false;
    this.random = randomFrom(startNumber);
    this.budget = budget;
    this.told = told;
    this.best = this.passes.room();
    this.spare = this.passes.room();
    const first = serial(this.passes, windows);
    this.keepBest(0, first);
    if (budget >= 3 && !this.done()) {
      const third = justified(this.passes, first);
      this.keepBest(0, third);
      this.sides[0].push(third);
    }
  }

  private done(): boolean {
    return this.passes.count >= this.budget || this.best.makespan <= this.bound;
  }

  /** Remembers a schedule when it is strictly better, always as time runs forward. */
  private keepBest(side: Side, { starts, makespan }: Timed): void {
    // Backward in time nothing keeps an activity from lying before its earliest start.
    if (makespan >= this.best.makespan || (side === 1 && this.released)) return;
    this.gained = true;
    const { durations } = this.passes.network;
    this.best.makespan = makespan;
    for (let i = 0; i < starts.length; i += 1) this.best.starts[i] = side === 0 ? starts[i] ?? 0 : makespan - (starts[i] ?? 0) - (durations[i] ?? 0);
    this.told(makespan, this.passes.count);
  }

  private generate(side: Side, room: Timed): Timed {
    this.passes.generate(side, room);
    this.keepBest(side, room);
    return room;
  }

  /** Fills the forward side with samples, the best of several, and the backward side from it. */
  private begin(samples: number): void {
    const [forward, backward] = this.sides;
    while (forward.length < samples && !this.done()) {
      this.sampler.fill(this.passes, this.random);
      forward.push(this.generate(0, this.passes.room()));
    }
    forward.sort((a, b) => a.makespan - b.makespan);
    forward.length = Math.min(forward.length, house.kept);
    backward.length = 0;
    for (const f of forward) {
      if (this.done()) return;
      this.passes.orderFrom(1, f);
      backward.push(this.generate(1, this.passes.room()));
    }
  }

  private tournament(of: readonly Timed[]): Timed {
    const [a, b] = [of[pick(this.random, of.length)], of[pick(this.random, of.length)]];
    return a === undefined || b === undefined ? this.spare : a.makespan <= b.makespan ? a : b;
  }

  /** One child for each schedule of the other side. */
  private generation(side: Side): void {
    const from = this.sides[side === 0 ? 1 : 0];
    const to = this.sides[side];
    for (let i = 0; i < to.length && !this.done(); i += 1) {
      const [first, old] = [from[i], to[i]];
      if (first === undefined || old === undefined) return;
      let second = this.tournament(from);
      if (second === first) second = from[pick(this.random, from.length)] ?? first;
      this.crossing.fill(side, first, second, this.random);
      const child = this.generate(side, this.spare);
      if (child.makespan > old.makespan && this.random() >= house.lenient) continue;
      to[i] = child;
      this.spare = old;
    }
  }

  run(): Found {
    this.begin(house.kept * house.samples);
    let side: Side = 0;
    let idle = 0;
    while (!this.done() && this.sides[1].length > 0) {
      this.gained = false;
      this.generation(side);
      side = side === 0 ? 1 : 0;
      idle = this.gained ? 0 : idle + 1;
      if (idle <= house.idle) continue;
      idle = 0;
      side = 0;
      this.sides[0].sort((a, b) => a.makespan - b.makespan);
      this.sides[0].length = 1;
      this.begin(house.kept);
    }
    return { starts: this.best.starts, makespan: this.best.makespan, schedules: this.passes.count };
  }
}

/**
 * The shortest schedule found with so many schedules: samples, then two populations, one that runs forward and one backward in time, each
 * bred from the other. The same start number gives the same schedule. Ends early at the lower bound.
 * @param budget schedules to generate, at least 1.
 * @throws RangeError when rules contradict each other or go in a circle, or an activity wants more of a thing than there is.
 * Source: bi-population genetic search, Debels and Vanhoucke 2005 (from memory); published averages stand in the benchmark.
 */
export const search = (problem: ScheduleProblem, startNumber: number, budget: number, told: Better = () => undefined): Found => new Search(problem, startNumber, budget, told).run();
