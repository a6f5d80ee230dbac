import { eventSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import type { EditResult } from './types';

/** Puts the event on another day, `YYYY-MM-DD`; all times of day stay. */
export function setDay(event: Event, day: string): EditResult {
  const checked = checkPart(eventSchema.shape.day, day, ['day']);
  return checked.ok ? settled({ ...event, day: checked.value }, { id: 'edit.day', params: { day: checked.value } }) : checked.problem;
}
