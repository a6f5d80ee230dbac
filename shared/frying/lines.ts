import type { Event, Station } from '../event';
import type { KitchenPlan, PanState } from '../kitchen';

/** Equal pans of one station, worked as one: any of them may take any batch. */
export interface FryLine {
  readonly station: Station;
  readonly pans: readonly PanState[];
  /** Pans heated by the burner of one of these at once, in stations that fry. */
  readonly sharing: number;
  /** Minutes with pans in use, counted; batches add to it as they are placed. */
  readonly taken: Map<number, number>;
}

/** The lines of all stations. Pans are equal when shape, size, oil, weight and useful heat are. A pan that several stations name belongs to the first. */
export function fryLines(event: Event, kitchen: KitchenPlan): FryLine[] {
  const byId = new Map(kitchen.pans.map((p) => [p.pan.id, p]));
  const owned = new Set<string>();
  const stations = event.kitchen.stations.map((station) => ({
    station,
    pans: [...new Set(station.pans)].flatMap((id) => {
      const state = byId.get(id);
      if (state === undefined || owned.has(id)) return [];
      owned.add(id);
      return [state];
    }),
  }));
  const onBurner = (id: string): number => [...owned].filter((pan) => byId.get(pan)?.pan.burner === id).length;
  return stations.flatMap(({ station, pans }) => {
    const groups = new Map<string, PanState[]>();
    for (const pan of pans) {
      const key = signature(pan, onBurner(pan.pan.burner));
      groups.set(key, [...(groups.get(key) ?? []), pan]);
    }
    return [...groups.values()].map((group) => ({ station, pans: group, sharing: Math.max(1, onBurner(group[0]?.pan.burner ?? '')), taken: new Map<number, number>() }));
  });
}

function signature({ pan, burner }: PanState, sharing: number): string {
  const { shape, rimMm, depthMm, bottomMm, lengthMm, widthMm, massKg, material, oilLitres } = pan;
  return JSON.stringify([shape, rimMm, depthMm, bottomMm, lengthMm, widthMm, massKg, material, oilLitres, burner.usefulW.value, sharing]);
}

/** Marks a pan of the line as used from `from` up to (not with) `to`. */
export function take(line: FryLine, from: number, to: number): void {
  for (let t = from; t < to; t += 1) line.taken.set(t, (line.taken.get(t) ?? 0) + 1);
}

/**
 * Which pan of a line takes each interval: in order of start, the first pan that is free. As never more intervals overlap than there are
 * pans, one always is (colouring of interval graphs). @throws RangeError when more overlap, which would be a fault of the planner.
 */
export function assignPans(line: FryLine, intervals: readonly { readonly from: number; readonly to: number }[]): string[] {
  const freeAt = line.pans.map(() => -Infinity);
  const chosen: string[] = intervals.map(() => '');
  const order = intervals.map((_, i) => i).sort((a, b) => (intervals[a]?.from ?? 0) - (intervals[b]?.from ?? 0) || a - b);
  for (const i of order) {
    const interval = intervals[i];
    const pan = freeAt.findIndex((t) => interval !== undefined && t <= interval.from);
    const state = line.pans[pan];
    if (interval === undefined || state === undefined) throw new RangeError('more batches at once than pans');
    freeAt[pan] = interval.to;
    chosen[i] = state.pan.id;
  }
  return chosen;
}
