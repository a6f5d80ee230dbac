import type { Dispenser, Event } from '../event';
import { changeItem } from './items';
import { dispensers } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a flask or urn; a field patched to `undefined` goes back to its default or out. */
export const changeDispenser = (event: Event, id: string, patch: Patch<Dispenser>): EditResult => changeItem(event, dispensers, id, patch);
