import type { Pot, Event } from '../event';
import { changeItem } from './items';
import { pots } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a pot; a field patched to `undefined` goes back to its default or out. */
export const changePot = (event: Event, id: string, patch: Patch<Pot>): EditResult => changeItem(event, pots, id, patch);
