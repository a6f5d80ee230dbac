import { precautionsSchema, type Event, type Precautions } from '../event';
import { checkPart, patched, settled } from './check';
import type { EditResult, Patch } from './types';

/** Writes down plain facts about place and day; a fact patched to `undefined` is not known again. */
export function setPrecautions(event: Event, patch: Patch<Precautions>): EditResult {
  const checked = checkPart(precautionsSchema, patched(event.precautions ?? {}, patch), ['precautions']);
  if (!checked.ok) return checked.problem;
  const { precautions: _had, ...without } = event;
  return settled(Object.keys(checked.value).length === 0 ? without : { ...event, precautions: checked.value }, { id: 'edit.precaution', params: { field: Object.keys(patch)[0] ?? '' } });
}
