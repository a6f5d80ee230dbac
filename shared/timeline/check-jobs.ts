import type { Event } from '../event';
import type { FryingPlan } from '../frying';
import { lowest } from '../measure';
import type { Message } from '../words';
import type { DayValues } from './day-values';
import type { Job } from './job';

/** How long before its moment a checklist may be read, and how long after closing the last one. Minutes; common practice, no source. */
const room = 45;
const lastWithin = 90;
/** The evening before, from six to nine, in minutes from the event's midnight. */
const evening = { from: -360, to: -180 };

const check = (id: string, name: Message, minutes: number, roles: readonly string[], from: number, to: number, towards: 'late' | 'early', anyTime = false): Job => ({
  id: `check/${id}`, kind: 'check', roles, about: {}, after: [], towards, spare: 0, anyTime, earliest: from, latest: to, notDoneBefore: from,
  stretches: [{ id: `check/${id}`, minutes, attention: 1, needs: [], name }],
});

/** The four pause points as jobs: the evening before, before the oil is heated, before the doors open, before leftovers are put away. Only those there is a reason for. */
export function checkJobs(takes: DayValues, event: Event, frying: FryingPlan, hosting: boolean): Job[] {
  const oil = frying.sessions.length === 0 ? null : Math.floor(lowest(frying.sessions.map((s) => s.heatOnAt)));
  return [
    ...(hosting || oil !== null ? [check('day-before', { id: 'timeline.task.checkDayBefore' }, takes.check, ['cook'], evening.from, evening.to, 'early', true)] : []),
    ...(oil === null ? [] : [check('oil', { id: 'timeline.task.checkOil' }, takes.check, ['fryer', 'cook'], oil - room, oil, 'late')]),
    ...(hosting ? [
      check('doors', { id: 'timeline.task.checkDoors' }, takes.check, ['cook', 'runner'], event.opensAt - room, event.opensAt, 'late'),
      check('leftovers', { id: 'timeline.task.checkLeftovers' }, takes.check, ['cook', 'runner'], event.closesAt, event.closesAt + lastWithin, 'early'),
    ] : []),
  ];
}
