import { lowest } from '../measure';
import type { Batch, OilSession } from '../frying';
import type { Message } from '../words';
import { heatedBy } from './burner-share';
import { fixedJob, type Job, type Placed, type Stretch } from './job';
import { factsOf } from './job-facts';
import type { OilStation } from './oil-jobs';
import { book, type Helper, type Resources } from './resources';

/** Somebody, or nobody, at the oil of a station for a while. */
interface Watch {
  readonly from: number;
  readonly to: number;
  readonly helper: Helper | null;
}

/** Stretches in which at least one pan of the station is on the heat. */
function hotStretches(sessions: readonly OilSession[]): { from: number; to: number }[] {
  const merged: { from: number; to: number }[] = [];
  for (const s of sessions.toSorted((a, b) => a.heatOnAt - b.heatOnAt)) {
    const last = merged.at(-1);
    if (last !== undefined && s.heatOnAt <= last.to) last.to = Math.max(last.to, s.heatOffAt);
    else merged.push({ from: s.heatOnAt, to: s.heatOffAt });
  }
  return merged;
}

/** The latest moment up to `until` at which no batch is in a pan; `until` itself when there is none after `from`. */
function handover(batches: readonly Batch[], from: number, until: number): number {
  let at = until;
  for (let tries = 0; tries < batches.length + 1; tries += 1) {
    const inPan = batches.find((b) => b.dropAt < at && b.panFreeAt > at);
    if (inPan === undefined) return at > from ? at : until;
    at = inPan.dropAt;
  }
  return until;
}

function nextWatch(resources: Resources, batches: readonly Batch[], from: number, to: number): Watch {
  const reach = (h: Helper): number => h.busy.conflict(from, to, 1)?.from ?? to;
  const { shortestWatch } = resources.values;
  const enough = Math.min(to, from + shortestWatch);
  for (const roles of [['fryer'], ['runner'], ['cook'], []]) {
    const able = resources.helpers.filter((h) => (roles.length === 0 || roles.some((r) => h.person.roles.includes(r))) && reach(h) >= enough);
    const best = able.toSorted((a, b) => reach(b) - reach(a) || a.booked - b.booked)[0];
    if (best !== undefined) {
      const end = reach(best) >= to ? to : handover(batches, from, reach(best));
      return { from, to: end, helper: best };
    }
  }
  const later = resources.helpers.map((h) => h.busy.conflict(from, from + 1e-3, 1)?.to ?? from + shortestWatch).filter((t) => t > from && t < to);
  return { from, to: lowest(later, to), helper: null };
}

/** The latest moment up to `until`, at most `back` before it, at which no batch is in a pan; null when there is none. */
function clear(batches: readonly Batch[], until: number, back: number): number | null {
  const at = handover(batches, until - back, until);
  return batches.some((b) => b.dropAt < at && b.panFreeAt > at) ? null : at;
}

/** Where in a watch longer than anybody should work without a break somebody takes over: about its middle, as early or as late as it helps; null nowhere. */
export type Relief = 'middle' | 'early' | 'late' | null;

/** How far from its place a relief may be, in minutes. Common practice, no source. */
const reliefReach = 30;

/** Who fries elsewhere is asked last: a swap of two who fry would rest neither. */
function reliefRank(h: Helper): number {
  const at = ['fryer', 'tea', 'cook', 'runner'].findIndex((role) => h.person.roles.includes(role));
  return at < 0 ? -4 : -at;
}

/** A watch too long for one person, with somebody else for the length of a meal, between two batches; the watch as it was when nobody is free. */
function relieved(resources: Resources, watch: Watch, batches: readonly Batch[], relief: 'middle' | 'early' | 'late'): Watch[] {
  const { breakEvery, meal } = resources.values;
  if (watch.helper === null || watch.to - watch.from <= breakEvery) return [watch];
  const halves = [(watch.from + watch.to - meal) / 2, Math.max(watch.from + reliefReach * 2, watch.to - breakEvery - meal + reliefReach), Math.min(watch.to - meal - reliefReach, watch.from + breakEvery)] as const;
  const [middle, early, late] = halves;
  const from = clear(batches, Math.round(relief === 'early' ? early : relief === 'late' ? late : middle), reliefReach);
  // Long enough to eat: the first clear moment after that.
  const ends = batches.map((b) => Number(b.panFreeAt)).filter((t) => from !== null && t >= from + meal && t <= from + meal + reliefReach).toSorted((a, b) => a - b);
  const to = from === null ? null : [from + meal, ...ends].find((t) => !batches.some((b) => b.dropAt < t && b.panFreeAt > t)) ?? null;
  if (from === null || to === null || from <= watch.from || to >= watch.to) return [watch];
  const able = resources.helpers.filter((h) => h !== watch.helper && h.busy.conflict(from, to, 1) === null && !h.atOil.some((w) => w.from <= to && w.to >= from));
  const other = able.toSorted((a, b) => reliefRank(a) - reliefRank(b) || a.booked - b.booked)[0];
  if (other === undefined) return [watch];
  const parts: Watch[] = [{ ...watch, to: from }, { from, to, helper: other }, { ...watch, from: to }];
  bookWatch(watch, -1);
  for (const part of parts) bookWatch(part, 1);
  return parts;
}

function watchesOf(resources: Resources, sessions: readonly OilSession[], batches: readonly Batch[]): Watch[] {
  const watches: Watch[] = [];
  for (const hot of hotStretches(sessions)) {
    let from = hot.from;
    while (from < hot.to) {
      const watch = nextWatch(resources, batches, from, hot.to);
      watches.push(watch);
      bookWatch(watch, 1);
      from = watch.to;
    }
  }
  return watches;
}

/** Books whoever is at the oil for the whole time, or gives them back. */
function bookWatch({ helper, from, to }: Watch, sign: 1 | -1): void {
  if (helper === null) return;
  helper.busy.add(from, to, sign);
  helper.booked += sign * (to - from);
  if (sign === 1) helper.atOil.push({ from, to });
  else helper.atOil.splice(helper.atOil.findIndex((w) => w.from === from && w.to === to), 1);
}

/** Books things only: whoever is at the oil has been booked for the whole time already. */
function put(resources: Resources, job: Job, start: number, helper: Helper | null): Placed {
  const { things: claims, possible } = factsOf(resources, job);
  const free = possible && claims.every((c) => c.profile.clashIndex(start + c.from, start + c.to, c.amount) < 0);
  if (free) book(claims, start, 1);
  return { job, start, who: helper?.person.id ?? null, things: free, tooEarly: 0, home: false };
}

/**
 * Oil and batches of every station: heating, watching from heat-on to heat-off, each batch. One person is at the oil of a station and does
 * nothing else; when their hours end they hand over between two batches. Who takes over for a while is looked for when every station has somebody.
 * @param relief where somebody takes over for a while in a watch longer than anybody should work without a break.
 */
export function placeOil(resources: Resources, stations: readonly OilStation[], relief: Relief = null): Placed[] {
  const watched = stations.map((oil) => ({ oil, watches: watchesOf(resources, oil.sessions, oil.batches) }));
  return watched.flatMap(({ oil, watches }) => placeStation(resources, oil, relief === null ? watches : watches.flatMap((w) => relieved(resources, w, oil.batches, relief))));
}

function placeStation(resources: Resources, { heats, batches, fries, share, station }: OilStation, watches: readonly Watch[]): Placed[] {
  const placed: Placed[] = [];
  const at = (from: number, to: number): Helper | null => watches.find((w) => w.from <= from && w.to >= to)?.helper ?? null;
  for (const { session, heat, burner, watchId, params } of heats) {
    placed.push(put(resources, heat, session.heatOnAt, at(session.heatOnAt, session.readyAt)));
    resources.things.get('pan')?.add(session.readyAt, session.heatOffAt, 1);
    let part = 0;
    for (const w of watches) {
      const [start, end] = [Math.max(w.from, session.heatOnAt), Math.min(w.to, session.heatOffAt)];
      if (end <= start) continue;
      part += 1;
      const id = `${watchId}/${part}`;
      const name: Message = { id: 'timeline.task.watchOil', params };
      const stretches = heatedBy(resources, burner, start, end).map((s, k): Stretch => ({ id: k === 0 ? id : `${id}/${k + 1}`, minutes: s.to - s.from, attention: share, needs: s.needs, name }));
      const job: Job = { ...fixedJob({ about: { station: station.id }, roles: ['fryer'], id, kind: 'watchOil', name, start, end, attention: share, needs: [] }), stretches };
      placed.push(put(resources, job, start, w.helper));
    }
  }
  for (const [k, b] of batches.entries()) {
    const job = fries[k];
    if (job === undefined) continue;
    const who = at(b.dropAt, b.panFreeAt)?.person.id ?? null;
    // The pan itself is booked by name here; of all pans it has been taken since the heat went on.
    const own = resources.things.get(`pan:${b.pan}`);
    const free = own !== undefined && own.clashIndex(b.dropAt, b.panFreeAt, 1) < 0;
    if (free) own.add(b.dropAt, b.panFreeAt, 1);
    placed.push({ job, start: b.dropAt, who, things: free, tooEarly: 0, home: false });
  }
  return placed;
}
