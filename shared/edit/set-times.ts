import { eventSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import type { EditResult } from './types';

/** Sets when the house opens and closes, in minutes from the day's midnight; past midnight counts on from 1440. */
export function setTimes(event: Event, opensAt: number, closesAt: number): EditResult {
  const opens = checkPart(eventSchema.shape.opensAt, opensAt, ['opensAt']);
  if (!opens.ok) return opens.problem;
  const closes = checkPart(eventSchema.shape.closesAt, closesAt, ['closesAt']);
  if (!closes.ok) return closes.problem;
  if (closes.value <= opens.value) return { problem: { id: 'event.wrongOrder', params: { where: [{ key: 'closesAt' }], hint: 'closesBeforeOpens' } }, path: 'closesAt' };
  return settled({ ...event, opensAt: opens.value, closesAt: closes.value }, { id: 'edit.times', params: { opensAt: opens.value, closesAt: closes.value } });
}
