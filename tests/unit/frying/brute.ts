/**
 * Fewest unmet portions, then fewest batches, by trying every set of lift minutes and matching portions to places in the pans one by one
 * (augmenting paths). Shares nothing with the planner. Only for a handful of batches and minutes.
 */
export interface Tiny {
  readonly wanted: readonly number[];
  readonly load: number;
  readonly fry: number;
  readonly cycle: number;
  readonly hold: number;
  readonly lead: number;
  readonly free: (minute: number) => number;
}

export function bruteForce(p: Tiny, mostBatches: number): { unmet: number; batches: number } {
  const from = (p.wanted[0] ?? 0) - p.hold;
  // A lead below zero: guests wait, so a lift may come after the minute.
  const to = (p.wanted.at(-1) ?? 0) - Math.min(0, p.lead);
  let best = { unmet: p.wanted.length, batches: 0 };
  const lifts: number[] = [];
  const visit = (earliest: number): void => {
    const unmet = p.wanted.length - matched(p, lifts);
    if (unmet < best.unmet || (unmet === best.unmet && lifts.length < best.batches)) best = { unmet, batches: lifts.length };
    if (lifts.length === mostBatches) return;
    for (let lift = earliest; lift <= to; lift += 1) {
      lifts.push(lift);
      if (pansSuffice(p, lifts)) visit(lift);
      lifts.pop();
    }
  };
  visit(from);
  return best;
}

function pansSuffice(p: Tiny, lifts: readonly number[]): boolean {
  for (const lift of lifts) {
    for (let t = lift - p.fry; t < lift - p.fry + p.cycle; t += 1) {
      const busy = lifts.filter((a) => a - p.fry <= t && t < a - p.fry + p.cycle).length;
      if (busy > p.free(t)) return false;
    }
  }
  return true;
}

function matched(p: Tiny, lifts: readonly number[]): number {
  const places = lifts.flatMap((lift) => Array.from({ length: p.load }, () => lift));
  const taken: (number | undefined)[] = places.map(() => undefined);
  const tryPlace = (portion: number, seen: Set<number>): boolean => {
    const at = p.wanted[portion]!;
    for (let i = 0; i < places.length; i += 1) {
      const lift = places[i]!;
      if (seen.has(i) || at < lift + p.lead || at > lift + p.hold) continue;
      seen.add(i);
      const holder = taken[i];
      if (holder === undefined || tryPlace(holder, seen)) {
        taken[i] = portion;
        return true;
      }
    }
    return false;
  };
  return p.wanted.filter((_, portion) => tryPlace(portion, new Set())).length;
}
