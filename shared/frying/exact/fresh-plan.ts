import { boundsOf, type Bounds } from './fixpoint';
import { countUpTo, type FryBatch, type FryProblem } from './problem';

/** What a fresh plan may cost: see `freshPlan`. */
export interface Freshness {
  /** Batches more than the fewest; 0 keeps their number. */
  readonly more: number;
  /** Pieces below which a batch counts as small; 0 when no batch does. */
  readonly small: number;
  /** Portion-minutes of waiting that a batch of no pieces would count as for each piece of `small`; see `smallness`. */
  readonly dear: number;
  /** Partial plans kept for each number of portions served; more is slower and surer. */
  readonly width: number;
}
/** A plan with the least waiting. */
export interface FreshPlan {
  readonly batches: readonly FryBatch[];
  /** No plan with as many batches costs less. False when partial plans were dropped, or with more than two pans. */
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

/** What a small batch counts as, in portion-minutes: nothing from `small` pieces on, then rising with the square of what is missing. */
export const smallness = (f: Pick<Freshness, 'small' | 'dear'>, pieces: number): number =>
  (pieces >= f.small ? 0 : (f.dear * (f.small - pieces) ** 2) / f.small);

/**
 * The plan whose portions wait least from lift to eating, with the fewest batches and `more`; small batches count as waiting. null when not
 * everybody can be served, or not with so many batches.
 *
 * One batch after another, forward in time. By the exchange argument of `fewestBatches` each batch serves a consecutive run; its cost is
 * wanted minutes less lift. Of partial plans that end at the same portion and keep the same pans busy the cheaper is kept. The greatest
 * fixpoint bounds what any plan can have served after j batches and how late batch j can go in, and cuts off the rest. The state is complete
 * for one and two pans: of all earlier put-ins only the last can still hold a pan that matters.
 */
export function freshPlan(p: FryProblem, f: Freshness): FreshPlan | null {
  const bounds = boundsOf(p);
  if ('portion' in bounds) return null;
  const count = bounds.drops.length + (p.wanted.length === 0 ? 0 : f.more);
  const sums = runningTotals(p.wanted);
  const room: Room = { p, f, sums, free: new Map() };
  let exact = p.pans <= 2;
  let labels: Label[] = [{ end: 0, dropAt: -Infinity, cost: 0, recent: [], before: null }];
  for (let j = 0; j < count; j += 1) {
    const limits = { latest: bounds.drops[j] ?? Infinity, most: Math.min(mostAfter(bounds, j), p.wanted.length - (count - 1 - j)), least: p.wanted.length - (count - 1 - j) * p.load };
    const next = stage(room, labels, limits);
    const kept = narrowed(next, f.width, p.pans === 1);
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
      const recent = p.pans === 1 ? [drop] : [...l.recent.filter((s) => s + p.cycle > drop), drop];
      const key = drop * 1024 + (recent.length < 2 ? 1023 : drop - (recent.at(-2) ?? 0));
      const reach = Math.min(largest, countUpTo(p.wanted, drop + p.fry + p.hold));
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

/** For each number of portions served the cheapest partial plans; with one pan those that are neither earlier nor cheaper than another go first. */
function narrowed(byEnd: ReadonlyMap<number, ReadonlyMap<number, Label>>, width: number, single: boolean): { labels: Label[]; cut: boolean } {
  const labels: Label[] = [];
  let cut = false;
  for (const found of byEnd.values()) {
    const states = [...found.values()].sort((a, b) => a.cost - b.cost || a.dropAt - b.dropAt);
    let earliest = Infinity;
    let kept = 0;
    for (const l of states) {
      if (single && l.dropAt >= earliest) continue;
      if (kept === width) {
        cut = true;
        break;
      }
      earliest = Math.min(earliest, l.dropAt);
      labels.push(l);
      kept += 1;
    }
  }
  return { labels, cut };
}

function readBack(last: Label): FryBatch[] {
  const batches: FryBatch[] = [];
  for (let l: Label | null = last; l !== null && l.before !== null; l = l.before) batches.unshift({ dropAt: l.dropAt, first: l.before.end, end: l.end });
  return batches;
}
