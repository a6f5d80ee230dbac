import { countUpTo } from './problem';

/** A dish among several in the same pans. Minutes whole, portions' minutes ascending. */
export interface SharedDish {
  readonly wanted: readonly number[];
  readonly fry: readonly (number | null)[];
  /** By line: pieces of a full batch, and minutes it has its pan; null where the line does not fry it. */
  readonly load: readonly (number | null)[];
  readonly cycle: readonly (number | null)[];
  readonly hold: number;
}

/** Why portions wanted in a stretch of time cannot all be served: shown by prices of the pans' time, or by counting batches. */
export interface ShortWindow {
  readonly from: number;
  readonly to: number;
  /** Dishes the stretch counts, by index, and portions of each of them wanted in it. */
  readonly dishes: readonly number[];
  readonly wanted: readonly number[];
  readonly because: PanTimeBound | BatchesBound;
  /** Portions that nobody can get in any plan, not yet rounded up to whole ones; more than 0. */
  readonly short: number;
}

/** Pan-minutes of each line in which these portions can be fried, portions a pan-minute is worth at most, and of each dish the part of a portion that needs none at those prices. */
export interface PanTimeBound {
  /** Dish (index) that just pays its pan at these prices. */
  readonly pivot: number;
  readonly gives: readonly number[];
  readonly price: readonly number[];
  readonly spared: readonly number[];
}

/** Pieces of the batches that serve most, as many batches as the pans can take in the time. */
export interface BatchesBound {
  readonly batches: readonly number[];
}

/** Minutes looked at as ends of stretches; of more, every second, third … is: fewer stretches never make the bound wrong. */
const ends = 160;
/** Of more dishes than this only each alone and all together are looked at. */
const setsUpTo = 4;

/**
 * Portions that go short in EVERY plan of several dishes in shared pans: stretches of time apart from each other, whose shortages add up.
 *
 * What is wanted from t1 to t2 of a dish is put in from t1 - hold - fry to t2 - fry (lift to eating at most `hold`, no lead), and every batch has its
 * pan for `cycle` minutes. So with prices u for a pan-minute of each line, whatever they are, no plan serves more of them than
 *   sum over lines u × pan-minutes + sum over dishes wanted × max(0, 1 - least over lines u × cycle / load)
 * (weak duality of the relaxation in which batches may be cut). Prices at which one dish just pays its pan are tried; with one line the best of them is
 * the optimum of the relaxation. Or batches are counted: a pan takes floor(length / shortest cycle) + 1 of them, and as many batches serve most when each
 * goes to the dish it serves most of (what n batches serve of a dish is concave in n).
 * @param pans pans of each line.
 */
export function shortWindows(dishes: readonly SharedDish[], pans: readonly number[]): ShortWindow[] {
  const minutes = [...new Set(dishes.flatMap((d) => d.wanted))].sort((a, b) => a - b);
  const step = Math.ceil(minutes.length / ends);
  const cuts = minutes.filter((_, i) => i % step === 0);
  const sets = setsOf(dishes.length);
  // best[j]: most that stretches before the j-th cut add up to.
  const best: { readonly total: number; readonly window: ShortWindow | null; readonly before: number }[] = [{ total: 0, window: null, before: 0 }];
  for (let j = 1; j <= cuts.length; j += 1) {
    let now = { total: best[j - 1]?.total ?? 0, window: null as ShortWindow | null, before: j - 1 };
    // The last minute anything is wanted before the next cut: a longer stretch would only give the pans more time.
    const to = minutes[Math.min(minutes.length, j * step) - 1] ?? 0;
    for (let i = 0; i < j; i += 1) {
      const found = worst(dishes, pans, sets, cuts[i] ?? 0, to);
      const total = (best[i]?.total ?? 0) + wholeShort(found);
      if (found !== null && total > now.total) now = { total, window: found, before: i };
    }
    best.push(now);
  }
  return readBack(best);
}

/** Whole portions a stretch is short by. */
export const wholeShort = (w: ShortWindow | null): number => (w === null ? 0 : Math.max(0, Math.ceil(w.short - 1e-9)));

function readBack(best: readonly { readonly window: ShortWindow | null; readonly before: number }[]): ShortWindow[] {
  const windows: ShortWindow[] = [];
  for (let j = best.length - 1; j > 0; j = best[j]?.before ?? 0) {
    const window = best[j]?.window ?? null;
    if (window !== null) windows.push(window);
  }
  return windows.toReversed();
}

function setsOf(count: number): number[][] {
  const all = Array.from({ length: count }, (_, i) => i);
  if (count > setsUpTo) return [...all.map((i) => [i]), all];
  return Array.from({ length: 2 ** count - 1 }, (_, s) => all.filter((i) => ((s + 1) >> i) % 2 === 1));
}

function worst(dishes: readonly SharedDish[], pans: readonly number[], sets: readonly (readonly number[])[], from: number, to: number): ShortWindow | null {
  const counts = dishes.map((d) => countUpTo(d.wanted, to) - countUpTo(d.wanted, from - 1));
  let most: ShortWindow | null = null;
  for (const set of sets) {
    if (set.some((i) => (counts[i] ?? 0) === 0)) continue;
    const wanted = set.map((i) => counts[i] ?? 0);
    const times = pans.map((n, line) => ({ pans: n, ...timeOf(dishes, set, line, from, to) }));
    for (const found of [...set.map((pivot) => priced(dishes, set, wanted, times, pivot)), counted(dishes, set, wanted, times)]) {
      if (found.short > Math.max(1e-9, most?.short ?? 0)) most = { ...found, from, to, dishes: set, wanted };
    }
  }
  return most;
}

/** Time of one line for what is wanted in a stretch: minutes of each pan, and batches it takes in them. */
interface LineTime {
  readonly pans: number;
  readonly minutes: number;
  readonly batches: number;
}
type Found = Pick<ShortWindow, 'because' | 'short'>;

function timeOf(dishes: readonly SharedDish[], set: readonly number[], line: number, from: number, to: number): Omit<LineTime, 'pans'> {
  let [first, lastDrop, end, shortest] = [Infinity, -Infinity, -Infinity, Infinity];
  for (const i of set) {
    const d = dishes[i];
    const [fry, cycle] = [d?.fry[line] ?? null, d?.cycle[line] ?? null];
    if (d === undefined || fry === null || cycle === null) continue;
    first = Math.min(first, from - d.hold - fry);
    lastDrop = Math.max(lastDrop, to - fry);
    end = Math.max(end, to - fry + cycle);
    shortest = Math.min(shortest, cycle);
  }
  return first === Infinity ? { minutes: 0, batches: 0 } : { minutes: end - first, batches: Math.floor((lastDrop - first) / shortest) + 1 };
}

/** The bound with the prices at which the pivot just pays its pan on every line; on a line without it, the dish that gets most out of a pan does. */
function priced(dishes: readonly SharedDish[], set: readonly number[], wanted: readonly number[], times: readonly LineTime[], pivot: number): Found {
  const rate = (i: number, line: number): number => (dishes[i]?.load[line] ?? 0) / (dishes[i]?.cycle[line] ?? 1);
  const gives = times.map((t) => t.pans * t.minutes);
  const price = gives.map((_, line) => (rate(pivot, line) > 0 ? rate(pivot, line) : Math.max(0, ...set.map((i) => rate(i, line)))));
  // A dish that no line fries needs more than there is: nothing of it is spared.
  const spared = set.map((i) => Math.max(0, 1 - gives.reduce((least, _, line) => (rate(i, line) > 0 ? Math.min(least, (price[line] ?? 0) / rate(i, line)) : least), Infinity)));
  const served = gives.reduce((sum, g, line) => sum + g * (price[line] ?? 0), 0) + wanted.reduce((sum, n, k) => sum + n * (spared[k] ?? 0), 0);
  return { because: { pivot, gives, price, spared }, short: total(wanted) - served };
}

/** The bound by counting batches; of a dish on several lines the largest load counts on all. */
function counted(dishes: readonly SharedDish[], set: readonly number[], wanted: readonly number[], times: readonly LineTime[]): Found {
  const loads = set.map((i) => Math.max(0, ...(dishes[i]?.load ?? []).map((n) => n ?? 0)));
  const left = [...wanted];
  const batches: number[] = [];
  for (let n = times.reduce((sum, t) => sum + t.pans * t.batches, 0); n > 0; n -= 1) {
    const gains = left.map((rest, k) => Math.min(rest, loads[k] ?? 0));
    const most = Math.max(...gains);
    if (most <= 0) break;
    batches.push(most);
    const k = gains.indexOf(most);
    left[k] = (left[k] ?? 0) - most;
  }
  return { because: { batches }, short: total(wanted) - total(batches) };
}

const total = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
