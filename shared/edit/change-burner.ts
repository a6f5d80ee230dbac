import type { Burner, Event } from '../event';
import { changeItem } from './items';
import { burners } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a burner; a field patched to `undefined` goes back to its default or out. */
export const changeBurner = (event: Event, id: string, patch: Patch<Burner>): EditResult => changeItem(event, burners, id, patch);
