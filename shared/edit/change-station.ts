import type { Station, Event } from '../event';
import { changeItem } from './items';
import { stations } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a fry station; a field patched to `undefined` goes back to its default or out. */
export const changeStation = (event: Event, id: string, patch: Patch<Station>): EditResult => changeItem(event, stations, id, patch);
