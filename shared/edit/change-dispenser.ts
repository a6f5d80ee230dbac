import type { Dispenser, Event } from '../event';
import { changeItem } from './items';
import { dishes, dispensers } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a flask or urn; a field patched to `undefined` goes back to its default or out. */
export const changeDispenser = (event: Event, id: string, patch: Patch<Dispenser>): EditResult =>
  changeItem(event, dispensers, id, patch, 'dish' in patch && Object.keys(patch).length === 1 ? (before, after) => {
    const dish = event.menu.dishes.find((d) => d.id === after.dish);
    return { id: 'edit.holds', params: { name: before.name, dish: dish === undefined ? null : dishes.nameOf(dish, event) } };
  } : undefined);
