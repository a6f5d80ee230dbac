import { boundsOf, type Bounds } from './fixpoint';
import { freshSingle } from './fresh-single';
import { countUpTo, type FryBatch, type FryProblem } from './problem';
import { smallness, type Freshness } from './smallness';

/** A plan with the least waiting. */
export interface FreshPlan {
  readonly batches: readonly FryBatch[];
  /** No plan with as many batches costs less: one pan always, two unless partial plans were dropped. */
  readonly exact: boolean;
}

/** A partial plan: `end` portions served by the batches so far, at this cost. `recent` = put-ins whose pans may still be busy. */
interface Label {
  readonly end: number;
  readonly dropAt: number;
  readonly cost: number;
  readonly recent: readonly number[];
  readonly before: Label | null;
}

/**
 * The plan whose portions wait least from lift to eating, with the fewest batches and `more`; small batches count as waiting. null when not
 * everybody can be served, or not with so many batches. One pan: `freshSingle`, always exact.
 *
 * Several pans: one batch after another, forward in time. By the exchange argument of `fewestBatches` each batch serves a consecutive run; its cost is
 * wanted minutes less lift. Of partial plans that end at the same portion and keep the same pans busy the cheaper is kept. The greatest
 * fixpoint bounds what any plan can have served after j batches and how late batch j can go in, and cuts off the rest. The state is complete
 * for two pans: of all earlier put-ins only the last can still hold a pan that matters.
 */
export function freshPlan(p: FryProblem, f: Freshness): FreshPlan | null {
  const bounds = boundsOf(p);
  if ('portion' in bounds) return null;
  const count = bounds.drops.length + (p.wanted.length === 0 ? 0 : f.more);
  const sums = runningTotals(p.wanted);
  const room: Room = { p, f, sums, free: new Map(), looked: 0 };
  if (p.pans === 1) {
    const batches = freshSingle(p, f, bounds, count);
    return batches === null ? null : { batches, exact: true };
  }
  let exact = p.pans === 2;
  let labels: Label[] = [{ end: 0, dropAt: -Infinity, cost: 0, recent: [], before: null }];
  for (let j = 0; j < count; j += 1) {
    const limits = { latest: bounds.drops[j] ?? Infinity, most: Math.min(mostAfter(bounds, j), p.wanted.length - (count - 1 - j)), least: p.wanted.length - (count - 1 - j) * p.load };
    const next = stage(room, labels, limits);
    const kept = narrowed(next, room.looked > (f.effort * (j + 1)) / count ? 1 : f.width);
    if (kept.cut) exact = false;
    labels = kept.labels;
  }
  const best = labels.reduce<Label | null>((a, b) => (b.end === p.wanted.length && (a === null || b.cost < a.cost) ? b : a), null);
  return best === null ? null : { batches: readBack(best), exact };
}

interface Room {
  readonly p: FryProblem;
  readonly f: Freshness;
  readonly sums: readonly number[];
  /** Pans free all through a batch put in at a minute, before counting this dish. */
  readonly free: Map<number, number>;
  /** Ways of one more batch looked at so far. */
  looked: number;
}
interface Limits {
  readonly latest: number;
  readonly most: number;
  readonly least: number;
}

const mostAfter = (b: Bounds, j: number): number => b.ends[j] ?? Infinity;

function runningTotals(wanted: readonly number[]): number[] {
  const totals = [0];
  let sum = 0;
  for (const t of wanted) totals.push((sum += t));
  return totals;
}

/** All ways of one more batch, the best of each state. */
function stage(room: Room, labels: readonly Label[], limits: Limits): Map<number, Map<number, Label>> {
  const { p, f, sums } = room;
  const byEnd = new Map<number, Map<number, Label>>();
  for (const l of labels) {
    const first = p.wanted[l.end] ?? Infinity;
    const latest = Math.min(limits.latest, first - p.lead - p.fry);
    const largest = Math.min(limits.most, l.end + p.load);
    const earliest = Math.max(p.earliest, l.dropAt, (p.wanted[Math.max(l.end, limits.least - 1)] ?? Infinity) - p.hold - p.fry);
    for (let drop = latest; drop >= earliest; drop -= 1) {
      if (!fits(room, l.recent, drop)) continue;
      const recent = [...l.recent.filter((s) => s + p.cycle > drop), drop];
      const key = drop * 1024 + (recent.length < 2 ? 1023 : drop - (recent.at(-2) ?? 0));
      const reach = Math.min(largest, countUpTo(p.wanted, drop + p.fry + p.hold));
      room.looked += Math.max(0, reach - l.end);
      for (let end = Math.max(l.end + 1, limits.least); end <= reach; end += 1) {
        const size = end - l.end;
        const cost = l.cost + (sums[end] ?? 0) - (sums[l.end] ?? 0) - size * (drop + p.fry) + smallness(f, size);
        let states = byEnd.get(end);
        if (states === undefined) byEnd.set(end, (states = new Map<number, Label>()));
        const known = states.get(key);
        if (known === undefined || cost < known.cost) states.set(key, { end, dropAt: drop, cost, recent, before: l });
      }
    }
  }
  return byEnd;
}

/** A pan is free all through the batch put in at `drop`. */
function fits({ p, free }: Room, recent: readonly number[], drop: number): boolean {
  let open = free.get(drop);
  if (open === undefined) {
    open = p.pans;
    for (let t = drop; t < drop + p.cycle; t += 1) open = Math.min(open, p.free(t));
    free.set(drop, open);
  }
  if (open < 1) return false;
  const busy = recent.filter((s) => s + p.cycle > drop);
  // Few minutes of many need the slow look: only where other dishes and this one are in the pans together.
  if (busy.length < open) return true;
  for (let t = drop; t < drop + p.cycle; t += 1) if (busy.filter((s) => s + p.cycle > t).length + 1 > p.free(t)) return false;
  return true;
}

/** For each number of portions served the cheapest partial plans. */
function narrowed(byEnd: ReadonlyMap<number, ReadonlyMap<number, Label>>, width: number): { labels: Label[]; cut: boolean } {
  const labels: Label[] = [];
  let cut = false;
  for (const found of byEnd.values()) {
    const states = [...found.values()].sort((a, b) => a.cost - b.cost || a.dropAt - b.dropAt);
    if (states.length > width) cut = true;
    for (const l of states.slice(0, width)) labels.push(l);
  }
  return { labels, cut };
}

function readBack(last: Label): FryBatch[] {
  const batches: FryBatch[] = [];
  for (let l: Label | null = last; l !== null && l.before !== null; l = l.before) batches.unshift({ dropAt: l.dropAt, first: l.before.end, end: l.end });
  return batches;
}
