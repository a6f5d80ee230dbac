import { dayOf, type Event } from '../event';
import { highest, lowest } from '../measure';
import type { Job } from './job';

/** Hours in which somebody is there, the event's own hours when nobody is listed. */
function hoursOf(event: Event): { readonly from: number; readonly to: number } {
  const { people, opensAt, closesAt } = event;
  return people.length === 0 ? { from: opensAt, to: closesAt } : { from: lowest(people.map((p) => p.from)), to: highest(people.map((p) => p.to)) };
}

/** The cook's own jobs. One with only an end is done just in time, any other as soon as somebody is free; on another day it is the household's. */
export function ownJobs(event: Event): Job[] {
  const hours = hoursOf(event);
  return dayOf(event).ownJobs.map((own): Job => {
    const id = `own/${own.id}`;
    const from = own.from ?? (own.to === undefined ? hours.from : Math.min(hours.from, own.to - own.minutes));
    const to = Math.max(own.to ?? Math.max(hours.to, from + own.minutes), from + own.minutes);
    return {
      id, kind: 'own', roles: own.role === undefined ? ['runner', 'cook'] : [own.role], about: {}, after: [], spare: 0,
      stretches: [{ id, minutes: own.minutes, attention: 1, needs: own.needs.map(({ thing, count }) => ({ thing, count })), name: { id: 'timeline.task.own', params: { name: own.name } } }],
      earliest: from, latest: to, notDoneBefore: from, towards: own.from === undefined && own.to !== undefined ? 'late' : 'early', anyTime: to <= hours.from || from >= hours.to,
    };
  });
}
