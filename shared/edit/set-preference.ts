import { preferencesSchema, type Event, type Preferences } from '../event';
import { checkPart, patched, settled } from './check';
import type { EditResult, Patch } from './types';

/** Changes preferences of the event: units, paper, clock, currency, share of days to cover, safety rules … `undefined` goes back to the default. */
export function setPreference(event: Event, patch: Patch<Preferences>): EditResult {
  const checked = checkPart(preferencesSchema, patched(event.preferences, patch), ['preferences']);
  if (!checked.ok) return checked.problem;
  return settled({ ...event, preferences: checked.value }, { id: 'edit.preference', params: { field: Object.keys(patch)[0] ?? 'preferences' } });
}
