import type { Person, Event } from '../event';
import { changeItem } from './items';
import { people } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a helper; a field patched to `undefined` goes back to its default or out. */
export const changePerson = (event: Event, id: string, patch: Patch<Person>): EditResult => changeItem(event, people, id, patch);
