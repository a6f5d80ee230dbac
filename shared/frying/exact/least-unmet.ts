import { countUpTo, type FryProblem } from './problem';

/**
 * A partial plan up to some minute: `next` = first portion neither served nor lost, `lost` portions so far, `batches` so far,
 * `recent` = put-ins whose pans may still be busy. `lifted` is the chain of put-ins for reading the plan back.
 */
interface Label {
  readonly next: number;
  readonly lost: number;
  readonly batches: number;
  readonly recent: readonly number[];
  readonly unmet: Chain | null;
}
interface Chain {
  readonly from: number;
  readonly to: number;
  readonly before: Chain | null;
}

/** Labels looked at before the search gives way to the quick rule; keeps the answer within some tens of milliseconds. */
const labelLimit = 12_000;

/**
 * Indexes of the portions left out so that the rest can be served: as few as possible, and among those plans one with the fewest batches.
 * Walks the minutes forward. At each minute a batch may be lifted; it takes the earliest wanted portions that are within its window
 * (for given lifts, earliest deadline first serves the most: Glover 1967, matching in convex bipartite graphs). Plans with the same busy
 * pans are compared: one is kept unless another has no more lost portions, no smaller prefix and no more batches.
 * `exact` is false when `effort` labels were looked at and the quick rule (lift when a load is full or a portion would be lost) answered instead.
 */
export function leastUnmet(p: FryProblem, effort = labelLimit): { readonly unmet: readonly number[]; readonly exact: boolean } {
  const first = p.wanted[0];
  if (first === undefined) return { unmet: [], exact: true };
  let labels: Label[] = [{ next: 0, lost: 0, batches: 0, recent: [], unmet: null }];
  let seen = 0;
  const last = p.wanted.at(-1) ?? first;
  for (let lift = Math.max(first - p.hold, p.earliest + p.fry); lift <= last - p.lead; lift += 1) {
    labels = step(p, labels, lift);
    seen += labels.length;
    if (seen > effort) return { unmet: quickUnmet(p), exact: false };
  }
  const best = labels.map((l) => skipTo(l, p.wanted.length)).reduce((a, b) => (better(b, a) ? b : a));
  return { unmet: readChain(best.unmet), exact: true };
}

const better = (a: Label, b: Label): boolean => a.lost < b.lost || (a.lost === b.lost && a.batches < b.batches);

/** Portions before `index` that are not served are lost. */
const skipTo = (l: Label, index: number): Label =>
  index <= l.next ? l : { ...l, next: index, lost: l.lost + index - l.next, unmet: { from: l.next, to: index, before: l.unmet } };

function step(p: FryProblem, labels: readonly Label[], lift: number): Label[] {
  const alive = countUpTo(p.wanted, lift + p.lead - 1);
  const reach = countUpTo(p.wanted, lift + p.hold);
  const drop = lift - p.fry;
  let now = labels.map((l) => skipTo(l, alive));
  const all = [...now];
  // One lift after another in the same minute, as long as pans are free and portions wait.
  while (now.length > 0) {
    now = now.filter((l) => l.next < reach && panFree(p, l.recent, drop)).map((l) => ({
      next: Math.min(reach, l.next + p.load), lost: l.lost, batches: l.batches + 1, recent: [...l.recent, drop], unmet: l.unmet,
    }));
    for (const one of now) all.push(one);
  }
  return prune(all.map((l) => ({ ...l, recent: l.recent.filter((s) => s + p.cycle > drop + 1) })));
}

/** A pan is free all through the batch put in at `drop`. */
function panFree(p: FryProblem, recent: readonly number[], drop: number): boolean {
  for (let t = drop; t < drop + p.cycle; t += 1) {
    if (recent.filter((s) => s + p.cycle > t).length + 1 > p.free(t)) return false;
  }
  return true;
}

/**
 * Keeps the plans that no other with the same busy pans beats. Whatever follows plan b also follows plan a, and ends no worse, when a has the
 * longer prefix and no more lost portions (of equal ones, no more batches): sorted by prefix, each kept plan must be better than all before.
 */
function prune(labels: readonly Label[]): Label[] {
  const groups = new Map<string, Label[]>();
  for (const l of labels) {
    const key = l.recent.join(',');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [l]);
    else group.push(l);
  }
  return [...groups.values()].flatMap((group) => {
    const kept: Label[] = [];
    for (const l of group.sort((a, c) => c.next - a.next || a.lost - c.lost || a.batches - c.batches)) {
      const best = kept.at(-1);
      if (best === undefined || better(l, best)) kept.push(l);
    }
    return kept;
  });
}

function readChain(chain: Chain | null): number[] {
  const runs: Chain[] = [];
  for (let c = chain; c !== null; c = c.before) runs.unshift(c);
  return runs.flatMap((c) => Array.from({ length: c.to - c.from }, (_, i) => c.from + i));
}

function quickUnmet(p: FryProblem): number[] {
  let label: Label = { next: 0, lost: 0, batches: 0, recent: [], unmet: null };
  const last = p.wanted.at(-1) ?? 0;
  for (let lift = Math.max((p.wanted[0] ?? 0) - p.hold, p.earliest + p.fry); lift <= last - p.lead; lift += 1) {
    label = skipTo(label, countUpTo(p.wanted, lift + p.lead - 1));
    const drop = lift - p.fry;
    const reach = countUpTo(p.wanted, lift + p.hold);
    while (panFree(p, label.recent, drop) && (reach - label.next >= p.load || (label.next < reach && (p.wanted[label.next] ?? 0) - p.lead === lift))) {
      label = { ...label, next: Math.min(reach, label.next + p.load), batches: label.batches + 1, recent: [...label.recent, drop] };
    }
    label = { ...label, recent: label.recent.filter((s) => s + p.cycle > drop + 1) };
  }
  return readChain(skipTo(label, p.wanted.length).unmet);
}
