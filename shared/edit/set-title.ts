import { eventSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import type { EditResult } from './types';

/** Names the event. 1-120 letters. */
export function setTitle(event: Event, title: string): EditResult {
  const checked = checkPart(eventSchema.shape.title, title, ['title']);
  return checked.ok ? settled({ ...event, title: checked.value }, { id: 'edit.title', params: { title: checked.value } }) : checked.problem;
}
