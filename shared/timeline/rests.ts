import { earliestStart, latestStart } from '../measure';
import type { Message } from '../words';
import type { DayValues } from './day-values';
import { personRole } from './changed-jobs';
import type { Job, Placed } from './job';
import { settleAt } from './place';
import { claimsOf } from './job-facts';
import type { Helper, Resources } from './resources';

/** A break or a meal of one helper: wanted at a minute, possible in a window. Minutes from the event's midnight. */
export interface Rest {
  readonly job: Job;
  readonly wanted: number;
  readonly meal: boolean;
}

function restJob(id: string, person: string, minutes: number, from: number, to: number, meal: boolean): Job {
  return {
    id, kind: 'rest', roles: [personRole(person)], about: {}, after: [], spare: 0, towards: 'early', anyTime: false, earliest: from, latest: to, notDoneBefore: from,
    stretches: [{ id, minutes, attention: 1, needs: [], name: { id: meal ? 'timeline.task.meal' : 'timeline.task.break' } }],
  };
}

/** Breaks in a stretch of somebody's hours so that none of its parts is longer than the settled one; each about the middle of its place. */
function breaksIn(person: string, from: number, to: number, values: DayValues, firstNumber: number): Rest[] {
  const parts = Math.ceil((to - from) / values.breakEvery - 1e-9);
  return Array.from({ length: Math.max(0, parts - 1) }, (_, k): Rest => {
    const wanted = from + ((k + 1) * (to - from)) / parts;
    const reach = (to - from) / parts / 2;
    const job = restJob(`rest/${person}/${firstNumber + k}`, person, values.breakLength, Math.ceil(wanted - reach), Math.floor(wanted + reach), false);
    return { job, wanted: Math.round(wanted / 5) * 5, meal: false };
  });
}

/** What each helper wants by the hours they are there: a meal about their middle when they are there long enough, breaks before and after it. */
export function restsOf(resources: Resources): Rest[] {
  const { values } = resources;
  return resources.helpers.flatMap(({ person: { id, from, to } }): Rest[] => {
    if (to - from < values.mealFrom) return breaksIn(id, from, to, values, 1);
    const middle = (from + to) / 2;
    const start = Math.round((middle - values.meal / 2) / 5) * 5;
    const reach = (to - from) / 4;
    const meal: Rest = { job: restJob(`rest/${id}/meal`, id, values.meal, Math.ceil(middle - reach), Math.floor(middle + reach), true), wanted: start, meal: true };
    const morning = breaksIn(id, from, start, values, 1);
    return [...morning, meal, ...breaksIn(id, start + values.meal, to, values, morning.length + 1)];
  });
}

const helperOf = (resources: Resources, job: Job): Helper | undefined => resources.helpers.find((h) => job.roles.includes(personRole(h.person.id)));

/** Places a rest as near to where it is wanted as its helper is free, a meal in less time where there is no room for all of it; null when there is none. */
export function placeRest(resources: Resources, rest: Rest): Placed | null {
  const full = placeWhole(resources, rest);
  const { mealShort } = resources.values;
  if (full !== null || !rest.meal || (rest.job.stretches[0]?.minutes ?? 0) <= mealShort) return full;
  return placeWhole(resources, { ...rest, job: { ...rest.job, stretches: rest.job.stretches.map((s) => ({ ...s, minutes: mealShort })) } });
}

function placeWhole(resources: Resources, { job, wanted }: Rest): Placed | null {
  const helper = helperOf(resources, job);
  if (helper === undefined) return null;
  const minutes = job.stretches[0]?.minutes ?? 0;
  const claims = claimsOf(resources, job, helper, true);
  const [low, high] = [job.earliest, job.latest - minutes];
  const later = earliestStart(claims, Math.max(low, wanted), high);
  const earlier = latestStart(claims, low, Math.min(high, wanted));
  const start = later === null ? earlier : earlier === null || later - wanted <= wanted - earlier ? later : earlier;
  return start === null ? null : settleAt(resources, job, Math.round(start), helper, true);
}

/** Places a rest in the time for which somebody else has taken over at the oil: that is what they took over for. Null where nobody has. */
export function placeInRelief(resources: Resources, rest: Rest): Placed | null {
  const spells = helperOf(resources, rest.job)?.atOil.toSorted((a, b) => a.from - b.from) ?? [];
  for (const [k, spell] of spells.slice(1).entries()) {
    const from = spells[k]?.to ?? spell.from;
    const to = spell.from;
    if (to <= from || to - from > resources.values.meal * 2) continue;
    const placed = placeRest(resources, { ...rest, wanted: from, job: { ...rest.job, earliest: from, latest: to, notDoneBefore: from } });
    if (placed !== null) return placed;
  }
  return null;
}

/** The sentence about a rest there is no room for. */
export function noRest(resources: Resources, { job, meal }: Rest): Message {
  const person = helperOf(resources, job)?.person.name ?? '';
  return { id: meal ? 'timeline.note.noMeal' : 'timeline.note.noRest', params: { person, from: job.earliest, to: job.latest } };
}
