import type { Pan, Event } from '../event';
import { changeItem } from './items';
import { pans } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a pan; a field patched to `undefined` goes back to its default or out. */
export const changePan = (event: Event, id: string, patch: Patch<Pan>): EditResult => changeItem(event, pans, id, patch);
