import { eventSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import type { EditResult } from './types';

/** Writes the notes of the review. At most 4000 letters. */
export function setNotes(event: Event, notes: string): EditResult {
  const checked = checkPart(eventSchema.shape.review, { ...event.review, notes }, ['review']);
  return checked.ok ? settled({ ...event, review: checked.value }, { id: 'edit.notes' }) : checked.problem;
}
