import { kitchenSchema, type Event, type Kitchen } from '../event';
import { checkPart, patched, settled } from './check';
import type { EditResult, Patch } from './types';

/** Changes values of the kitchen as a whole: room and water temperature, height, size of the bowl, ovens, places, holding temperatures, oil. Its pans, pots and flasks have edits of their own. */
export function changeKitchen(event: Event, patch: Patch<Kitchen>): EditResult {
  const checked = checkPart(kitchenSchema, patched(event.kitchen, patch), ['kitchen']);
  if (!checked.ok) return checked.problem;
  return settled({ ...event, kitchen: checked.value }, { id: 'edit.kitchenValue', params: { field: Object.keys(patch)[0] ?? 'kitchen' } });
}
