import { dayOf, dayOrderSchema, type DayOrder, type Event } from '../event';
import { checkPart, settled } from './check';
import { inDay } from './lists';
import type { EditResult } from './types';

/** Lays the day out in an order that was found to be better; null gives the choice of the order back to the plan. */
export function takeDayOrder(event: Event, order: DayOrder | null): EditResult {
  if (order === null) {
    const { order: _had, ...rest } = dayOf(event);
    const { dayJobs: _all, ...without } = event;
    return settled(rest.ownJobs.length === 0 && rest.changes.length === 0 ? without : { ...event, dayJobs: rest }, { id: 'day.edit.plainOrder' });
  }
  const checked = checkPart(dayOrderSchema, order, ['dayJobs', 'order']);
  return checked.ok ? settled(inDay(event, { order: checked.value }), { id: 'day.edit.order' }) : checked.problem;
}
