import type { Dish, Event } from '../event';
import { changeItem } from './items';
import { dishes } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a dish of the menu; a field patched to `undefined` goes back to its default or out. */
export const changeDish = (event: Event, id: string, patch: Patch<Dish>): EditResult => changeItem(event, dishes, id, patch);
