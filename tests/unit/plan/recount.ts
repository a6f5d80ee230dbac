/**
 * Fewest batches for one product, counted in another way than the core does: forward, over whole minutes, by a search on how many
 * portions the first j batches can have covered. State after each batch: the latest lift time and the prefix served; only the best
 * (largest prefix for a given lift time) is kept. Exact for one pan; small horizons only.
 *
 * A batch lifted at minute a may feed demand of minutes a + lead … a + lead + hold − lead, i.e. it must be up `lead` minutes before the
 * demand it serves begins and each portion is eaten within `hold` minutes of the lift.
 */
export interface Line { readonly demand: readonly number[]; readonly load: number; readonly fryMinutes: number; readonly cycleMinutes: number; readonly hold: number; readonly lead: number; readonly earliestDrop: number }

/** Number of batches, or null when not everybody can be served. */
export function fewestBatches(line: Line): number | null {
  const taus: number[] = [];
  line.demand.forEach((d, t) => { for (let i = 0; i < d; i += 1) taus.push(t); });
  if (taus.length === 0) return 0;
  const latest = taus.at(-1)! + 1;
  // best.get(lift) = largest prefix served by the batches so far, the last of them lifted at `lift`.
  let states = new Map<number, number>([[Number.NEGATIVE_INFINITY, 0]]);
  for (let count = 1; count <= taus.length; count += 1) {
    const next = new Map<number, number>();
    for (const [lift, served] of states) {
      const first = taus[served]!;
      const from = Math.max(lift + line.cycleMinutes, line.earliestDrop + line.fryMinutes);
      for (let a = Math.max(from, first - line.hold); a <= Math.min(first - line.lead, latest); a += 1) {
        let end = served;
        while (end < taus.length && end - served < line.load && taus[end]! <= a + line.hold) end += 1;
        if (end > served && (next.get(a) ?? 0) < end) next.set(a, end);
      }
    }
    if ([...next.values()].some((n) => n === taus.length)) return count;
    if (next.size === 0) return null;
    states = next;
  }
  return null;
}
