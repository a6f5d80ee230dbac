import type { Batch, Bowl, FryingPlan, OilPause } from '../../frying';

/** Rows of a fry sheet in the order the fryer meets them. */
export type FryRow =
  | { readonly kind: 'bowl'; readonly bowl: Bowl }
  /** `hour`: the first batch put in within a new hour of the clock. */
  | { readonly kind: 'batch'; readonly batch: Batch; readonly hour: boolean }
  /** A long pause of a pan, before the batch that ends it. */
  | { readonly kind: 'pause'; readonly pause: OilPause }
  /** Fresh oil after a batch. */
  | { readonly kind: 'change'; readonly pan: string; readonly afterBatch: number }
  | { readonly kind: 'topUp'; readonly pan: string; readonly afterBatch: number; readonly litres: number };

/** One station's batches with each bowl before the first batch that uses it, long pauses before the batch that ends them, top-ups and fresh oil after theirs. */
export function fryRows(frying: FryingPlan, station: string): readonly FryRow[] {
  const rows: FryRow[] = [];
  const shown = new Set<number>();
  let hour: number | null = null;
  for (const batch of frying.batches.filter((b) => b.station === station)) {
    for (const pause of frying.pauses.filter((p) => p.pan === batch.pan && p.to === batch.dropAt)) rows.push({ kind: 'pause', pause });
    for (const number of batch.bowls) {
      const bowl = frying.bowls.find((b) => b.number === number);
      if (bowl !== undefined && !shown.has(number)) rows.push({ kind: 'bowl', bowl });
      shown.add(number);
    }
    const now = Math.floor(batch.dropAt / 60);
    rows.push({ kind: 'batch', batch, hour: hour !== null && now !== hour });
    hour = now;
    for (const oil of frying.oil.filter((o) => o.pan === batch.pan)) {
      for (const t of oil.topUps.filter((t) => t.afterBatch === batch.number)) rows.push({ kind: 'topUp', pan: oil.pan, ...t });
    }
    for (const end of frying.oilEnds) if (end.pan === batch.pan && end.changeAfter.includes(batch.number)) rows.push({ kind: 'change', pan: end.pan, afterBatch: batch.number });
  }
  return rows;
}

/** Rows that must stay on one page: a bowl or top-up never stands at the foot of a page without the batch beside it. */
export function keepTogether(rows: readonly FryRow[]): readonly (readonly FryRow[])[] {
  const groups: FryRow[][] = [];
  let open = false;
  for (const row of rows) {
    const last = groups.at(-1);
    if (last !== undefined && (open || row.kind === 'topUp' || row.kind === 'change')) last.push(row);
    else groups.push([row]);
    open = row.kind === 'bowl' || row.kind === 'pause';
  }
  return groups;
}
