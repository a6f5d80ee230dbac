import type { Event, Station } from '../event';
import type { Batch, FryingPlan, OilSession } from '../frying';
import type { DayValues } from './day-values';
import { fixedJob, type Job } from './job';

/** A time a pan of oil is hot, with what the plan says of it whoever stands there. */
export interface OilHeat {
  readonly session: OilSession;
  readonly heat: Job;
  /** Burner under the pan. */
  readonly burner: string | undefined;
  /** Stem of the ids of its watches. */
  readonly watchId: string;
  readonly params: { readonly pan: string; readonly station: string };
}

/** A fry station with its oil and batches as jobs: the same in every order in which the day is laid out. */
export interface OilStation {
  readonly station: Station;
  readonly sessions: readonly OilSession[];
  readonly batches: readonly Batch[];
  readonly heats: readonly OilHeat[];
  readonly fries: readonly Job[];
  /** Share of a person that watching one pan takes. */
  readonly share: number;
}

/** Oil and batches of every station. */
export const oilStations = (event: Event, values: DayValues, frying: FryingPlan): OilStation[] => event.kitchen.stations.map((station) => {
  const sessions = frying.sessions.filter((s) => s.station === station.id);
  const batches = frying.batches.filter((b) => b.station === station.id);
  const share = values.watching / Math.max(1, new Set([...sessions.map((s) => s.pan), ...batches.map((b) => b.pan)]).size);
  const seen = new Map<string, number>();
  const heats = sessions.map((session): OilHeat => {
    const pan = event.kitchen.pans.find((p) => p.id === session.pan);
    const params = { pan: pan?.name ?? session.pan, station: station.name };
    const nth = (seen.get(session.pan) ?? 0) + 1;
    seen.set(session.pan, nth);
    const heat = fixedJob({
      about: { station: station.id }, roles: ['fryer'], id: `heat/${session.pan}/${nth}`, kind: 'heatOil', name: { id: 'timeline.task.heatOil', params },
      start: session.heatOnAt, end: session.readyAt, attention: 0, needs: [{ thing: `pan:${session.pan}`, count: 1 }],
    });
    return { session, heat, burner: pan?.burner, watchId: `watch/${session.pan}/${nth}`, params };
  });
  const batchShare = share * ((1 - values.watching) / values.watching);
  return { station, sessions, batches, heats, share, fries: batches.map((b) => fryJob(event, b, batchShare)) };
});

function fryJob(event: Event, b: Batch, attention: number): Job {
  const dish = event.menu.dishes.find((d) => d.id === b.dish);
  const name = dish?.name ?? event.recipes.find((r) => r.id === dish?.recipe)?.name ?? b.dish;
  return fixedJob({
    id: `fry/${b.number}`, kind: 'fry', roles: ['fryer'], about: { dish: b.dish, station: b.station, batch: b.number },
    name: { id: 'timeline.task.fry', params: { batch: b.number, pieces: b.pieces, dish: name } },
    start: b.dropAt, end: b.panFreeAt, attention, needs: [{ thing: `pan:${b.pan}`, count: 1 }], after: b.bowls.map((n) => `bowl/${n}`),
  });
}
