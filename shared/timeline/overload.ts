import { earliestStart, highest, lowest } from '../measure';
import { lengthOf, type Placed } from './job';
import { claimsOf } from './job-facts';
import { kitchenHas, profilesOf, type Resources } from './resources';
import { standingClash } from './standing-clash';
import { thingClash } from './thing-clash';
import type { Clash, Overload } from './types';
import type { Message } from '../words';

/** How far ahead a later time is looked for. Unit: minutes. */
const lookAhead = 720;

/** The task a job begins with. */
const taskOf = (p: Placed): string => p.job.stretches[0]?.id ?? p.job.id;

/** All tasks of some jobs that need somebody. */
const tasksOf = (placed: readonly Placed[]): string[] => placed.flatMap((p) => p.job.stretches.filter((s) => s.attention > 0).map((s) => s.id));

const needsSomebody = (p: Placed): boolean => p.job.stretches.some((s) => s.attention > 0);

/** Minutes until it could be done by somebody with all it needs; 0 when that is not within twelve hours. */
function lateMinutes(resources: Resources, p: Placed): number {
  if (!p.job.stretches.every((s) => s.needs.every((n) => kitchenHas(resources, n)))) return 0;
  const starts = resources.helpers.flatMap((h) => earliestStart(claimsOf(resources, p.job, h, true), p.start, p.start + lookAhead) ?? []);
  return starts.length === 0 ? 0 : Math.ceil(lowest(starts) - p.start);
}

/** True when no helper is there long enough anywhere in the job's window. */
function outsideHours(resources: Resources, p: Placed): boolean {
  const length = lengthOf(p.job);
  return resources.helpers.every(({ person }) => Math.min(person.to, p.job.latest) - Math.max(person.from, p.job.earliest, p.job.notDoneBefore - length) < length);
}

/** The circuit that carries no more at its time; null when it is not that. */
function circuitMessage(resources: Resources, p: Placed): Message | null {
  let from = p.start;
  for (const stretch of p.job.stretches) {
    const to = from + stretch.minutes;
    for (const need of stretch.needs) {
      const power = resources.power.get(need.thing);
      if (power !== undefined && power.profile.clashIndex(from, to, power.watts) >= 0) return { id: 'timeline.overload.circuit', params: { circuit: power.circuit, watts: power.watts, carries: power.profile.capacity, from, to } };
    }
    from = to;
  }
  return null;
}

function thingMessage(resources: Resources, p: Placed): Message {
  let from = p.start;
  for (const stretch of p.job.stretches) {
    const to = from + stretch.minutes;
    for (const need of stretch.needs) {
      const short = profilesOf(resources, need).find((profile) => profile.conflict(from, to, need.count) !== null);
      const has = lowest(profilesOf(resources, need).map((x) => x.capacity), Number.MAX_SAFE_INTEGER);
      if (short !== undefined || !kitchenHas(resources, need)) {
        const [kind = need.thing] = need.thing.split(':');
        return { id: 'timeline.overload.thing', params: { thing: kind, wanted: need.count, has: has === Number.MAX_SAFE_INTEGER ? 0 : has, from, to } };
      }
    }
    from = to;
  }
  return circuitMessage(resources, p) ?? { id: 'timeline.overload.room', params: { minutes: lengthOf(p.job) } };
}

/** Why nobody could be found, counted over the helpers. */
function nobodyMessage(resources: Resources, p: Placed): Message {
  const [from, to] = [p.start, p.start + lengthOf(p.job)];
  let [atOil, away] = [0, 0];
  for (const h of resources.helpers) {
    if (h.person.from > from || h.person.to < to) away += 1;
    else if (h.atOil.some((w) => w.from < to && w.to > from)) atOil += 1;
  }
  const busy = resources.helpers.length - atOil - away;
  if (p.job.kind === 'watchOil' || p.job.kind === 'fry') return { id: 'timeline.overload.oil', params: { from, to, atOil, busy, away } };
  return { id: 'timeline.overload.nobody', params: { from, to, atOil, busy, away } };
}

/** Clashing sets looked for in one day: more would not be read, and would not be quick. */
const mostClashes = 4;

/**
 * Jobs that could not be placed with all they need, each with what clashes, which is worked out when it is first read: the instant answer
 * does without. @param restore brings people and things back to how this day has booked them.
 */
export function overloadsOf(resources: Resources, placed: readonly Placed[], restore: () => void): Overload[] {
  const found: Overload[] = [];
  const tell = (overload: Omit<Overload, 'clash'>, p: Placed): void => {
    const looks = found.length < mostClashes;
    let clash: Clash | null | undefined;
    const look = (): Clash | null => {
      if (!looks) return null;
      restore();
      return thingClash(resources, placed, p) ?? standingClash(resources, placed, p);
    };
    found.push({
      ...overload,
      get clash() {
        if (clash === undefined) clash = look();
        return clash ?? undefined;
      },
    });
  };
  const outside: Placed[] = [];
  const told = new Map<string, string[]>();
  // One sentence for a brew round, not one for each of its parts.
  const alsoOf = (p: Placed): { readonly also: string[]; readonly again: boolean } => {
    const key = p.job.kind === 'brew' ? `brew ${p.job.about.round ?? 0}` : p.job.id;
    const known = told.get(key);
    const also = known ?? [];
    for (const task of tasksOf([p])) if (known !== undefined || task !== taskOf(p)) also.push(task);
    told.set(key, also);
    return { also, again: known !== undefined };
  };
  const unmanned = placed.filter((p) => needsSomebody(p) && p.who === null);
  for (const p of placed) {
    if (!p.things) {
      const { also, again } = alsoOf(p);
      if (again) continue;
      tell({ task: taskOf(p), lateMinutes: lateMinutes(resources, p), message: thingMessage(resources, p), also }, p);
    } else if (p.tooEarly > 0) tell({ task: taskOf(p), lateMinutes: 0, message: { id: 'timeline.overload.early', params: { minutes: p.tooEarly } }, also: [] }, p);
  }
  const [first] = unmanned;
  if (resources.helpers.length === 0) {
    if (first !== undefined) found.push({ task: taskOf(first), lateMinutes: 0, message: { id: 'timeline.overload.noHelpers', params: { jobs: unmanned.length } }, also: tasksOf(unmanned).filter((id) => id !== taskOf(first)) });
    return found;
  }
  for (const p of unmanned) {
    if (!p.things) continue;
    if (outsideHours(resources, p)) outside.push(p);
    else tell({ task: taskOf(p), lateMinutes: 0, message: nobodyMessage(resources, p), also: tasksOf([p]).filter((id) => id !== taskOf(p)) }, p);
  }
  const [one] = outside;
  if (one !== undefined) {
    const from = lowest(outside.map((p) => p.start));
    const to = highest(outside.map((p) => p.start + lengthOf(p.job)));
    found.push({ task: taskOf(one), lateMinutes: 0, message: { id: 'timeline.overload.outside', params: { jobs: outside.length, from, to } }, also: tasksOf(outside).filter((id) => id !== taskOf(one)) });
  }
  return found;
}
