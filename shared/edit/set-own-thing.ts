import { shoppingOf, type Event } from '../event';
import { thing } from '../reference';
import { settled } from './check';
import { inShopping } from './lists';
import type { EditResult } from './types';

/** Says that the household has enough of a thing of its own (real cups), or that it has not. A thing the table does not know is no thing. */
export function setOwnThing(event: Event, id: string, own: boolean): EditResult {
  const row = thing(id);
  if (row === undefined) return { problem: { id: 'edit.gone', params: { id } }, path: 'shopping.ownThings' };
  const others = shoppingOf(event).ownThings.filter((t) => t !== id);
  return settled(inShopping(event, { ownThings: own ? [...others, id] : others }), { id: 'buying.edit.ownThing', params: { name: row.name, own } });
}
