import type { Event, OwnLine } from '../event';
import { changeItem } from './items';
import { ownLines } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a line of the cook's own; `when` patched to `undefined` is any day. */
export const changeOwnLine = (event: Event, id: string, patch: Patch<OwnLine>): EditResult => changeItem(event, ownLines, id, patch);
