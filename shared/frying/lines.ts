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

/** A batch's time in a pan, and of which dish. */
export interface PanTime {
  readonly from: number;
  readonly to: number;
  readonly dish: string;
}

/**
 * Marks pans of the line as used by one dish: from each put-in until the pan is free, and `change` minutes before and after, in which another
 * dish may not be in that pan. Of one dish the batches follow each other without that, so a minute counts the most pans it uses at once nearby.
 */
export function takeFor(line: FryLine, times: readonly Omit<PanTime, 'dish'>[], change: number): void {
  const start = times.reduce((first, t) => Math.min(first, t.from), Infinity);
  const length = times.reduce((last, t) => Math.max(last, t.to), -Infinity) - start;
  if (!(length > 0)) return;
  const used = new Uint16Array(length);
  for (const { from, to } of times) for (let i = from - start; i < to - start; i += 1) used[i] = (used[i] ?? 0) + 1;
  for (let i = -change; i < length + change; i += 1) {
    let most = 0;
    for (let k = Math.max(0, i - change); k <= Math.min(length - 1, i + change); k += 1) most = Math.max(most, used[k] ?? 0);
    if (most > 0) line.taken.set(start + i, (line.taken.get(start + i) ?? 0) + most);
  }
}

/**
 * Which pan of a line takes each batch: in order of put-in, of the pans that are free best one that fried this dish last, else one that has
 * had `change` minutes since another. As never more batches overlap than there are pans, one always is free (colouring of interval graphs).
 * @throws RangeError when more overlap, which would be a fault of the planner.
 */
export function assignPans(line: FryLine, times: readonly PanTime[], change: number): string[] {
  const pans = line.pans.map((p) => ({ id: p.pan.id, freeAt: -Infinity, dish: '' }));
  const chosen: string[] = times.map(() => '');
  const order = times.map((_, i) => i).sort((a, b) => (times[a]?.from ?? 0) - (times[b]?.from ?? 0) || a - b);
  for (const i of order) {
    const time = times[i];
    if (time === undefined) continue;
    const free = pans.filter((pan) => pan.freeAt <= time.from);
    const pan = free.find((f) => f.dish === time.dish) ?? free.find((f) => f.dish === '' || f.freeAt + change <= time.from) ?? free[0];
    if (pan === undefined) throw new RangeError('more batches at once than pans');
    pan.freeAt = time.to;
    pan.dish = time.dish;
    chosen[i] = pan.id;
  }
  return chosen;
}
