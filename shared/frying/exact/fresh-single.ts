import type { Bounds } from './fixpoint';
import { countUpTo, type FryBatch, type FryProblem } from './problem';
import { smallness, type Freshness } from './smallness';

/** Cheapest plans of the batches so far, by portions served and put-in of the last batch: two tables over `ends` x `drops`. */
interface Table {
  readonly endFrom: number;
  readonly endTo: number;
  readonly dropFrom: number;
  readonly drops: number;
  readonly cost: Float64Array;
  /** Portions served before the last batch, and column of the batch before it in its own table. */
  readonly before: Int32Array;
  readonly column: Int32Array;
  /** Cheapest with the last put-in not later than a column, and where it is. */
  readonly best: Float64Array;
  readonly bestColumn: Int32Array;
}

/**
 * The freshest plan with `count` batches in one pan, exactly: for every number of portions served and every put-in of the last batch the
 * cheapest plan so far. With one pan the batch before only has to be in early enough, so running least costs over its put-ins answer at once.
 * null when no plan has so many batches.
 */
export function freshSingle(p: FryProblem, f: Freshness, bounds: Bounds, count: number): FryBatch[] | null {
  const sums = [0];
  for (const t of p.wanted) sums.push((sums.at(-1) ?? 0) + t);
  const small = Array.from({ length: p.load + 1 }, (_, n) => smallness(f, n));
  const tables: Table[] = [];
  for (let j = 0; j < count; j += 1) {
    const last = tables.at(-1);
    const endFrom = Math.max(j + 1, p.wanted.length - (count - 1 - j) * p.load);
    const endTo = Math.min(bounds.ends[j] ?? Infinity, p.wanted.length - (count - 1 - j), (j + 1) * p.load);
    if (endFrom > endTo) return null;
    const dropFrom = Math.max(p.earliest, (p.wanted[endFrom - 1] ?? 0) - p.hold - p.fry);
    const dropTo = Math.min(bounds.drops[j] ?? Infinity, (p.wanted[last?.endTo ?? 0] ?? Infinity) - p.lead - p.fry);
    if (dropFrom > dropTo) return null;
    const table = empty(endFrom, endTo, dropFrom, dropTo - dropFrom + 1);
    fill(p, table, last, sums, small);
    runningLeast(table);
    tables.push(table);
  }
  return readBack(tables, p.wanted.length);
}

function empty(endFrom: number, endTo: number, dropFrom: number, drops: number): Table {
  const size = (endTo - endFrom + 1) * drops;
  return {
    endFrom, endTo, dropFrom, drops, cost: new Float64Array(size).fill(Infinity), before: new Int32Array(size), column: new Int32Array(size).fill(-1), best: new Float64Array(size), bestColumn: new Int32Array(size),
  };
}

function fill(p: FryProblem, t: Table, last: Table | undefined, sums: readonly number[], small: readonly number[]): void {
  for (let c = 0; c < t.drops; c += 1) {
    const drop = t.dropFrom + c;
    if (!panFree(p, drop)) continue;
    const lift = drop + p.fry;
    const reach = Math.min(t.endTo, countUpTo(p.wanted, lift + p.hold));
    // Portions wanted sooner than the lead after the lift belong to batches before.
    const early = countUpTo(p.wanted, lift + p.lead - 1);
    const column = last === undefined ? -1 : Math.min(last.drops - 1, drop - p.cycle - last.dropFrom);
    if (last !== undefined && column < 0) continue;
    for (let first = Math.max(early, last?.endFrom ?? 0); first <= (last?.endTo ?? 0); first += 1) {
      const from = last === undefined ? (first === 0 ? 0 : Infinity) : (last.best[(first - last.endFrom) * last.drops + column] ?? Infinity);
      if (from === Infinity) continue;
      const back = last === undefined ? -1 : (last.bestColumn[(first - last.endFrom) * last.drops + column] ?? -1);
      const base = from - (sums[first] ?? 0) + first * lift;
      for (let end = Math.max(first + 1, t.endFrom); end <= Math.min(reach, first + p.load); end += 1) {
        const cost = base + (sums[end] ?? 0) - end * lift + (small[end - first] ?? 0);
        const at = (end - t.endFrom) * t.drops + c;
        if (cost < (t.cost[at] ?? Infinity)) {
          t.cost[at] = cost;
          t.before[at] = first;
          t.column[at] = back;
        }
      }
    }
  }
}

function panFree(p: FryProblem, drop: number): boolean {
  for (let t = drop; t < drop + p.cycle; t += 1) if (p.free(t) < 1) return false;
  return true;
}

function runningLeast(t: Table): void {
  for (let row = 0; row <= t.endTo - t.endFrom; row += 1) {
    let [least, where] = [Infinity, -1];
    for (let c = 0; c < t.drops; c += 1) {
      const at = row * t.drops + c;
      // Of equal costs the latest put-in stands.
      if ((t.cost[at] ?? Infinity) <= least && t.cost[at] !== Infinity) [least, where] = [t.cost[at] ?? Infinity, c];
      t.best[at] = least;
      t.bestColumn[at] = where;
    }
  }
}

function readBack(tables: readonly Table[], all: number): FryBatch[] | null {
  const last = tables.at(-1);
  if (last === undefined) return [];
  const batches: FryBatch[] = [];
  let end = all;
  let column = last.bestColumn[(end - last.endFrom) * last.drops + last.drops - 1] ?? -1;
  for (let j = tables.length - 1; j >= 0; j -= 1) {
    const t = tables[j];
    if (t === undefined || column < 0) return null;
    const at = (end - t.endFrom) * t.drops + column;
    const first = t.before[at] ?? 0;
    batches.unshift({ dropAt: t.dropFrom + column, first, end });
    end = first;
    column = t.column[at] ?? -1;
  }
  return batches;
}
