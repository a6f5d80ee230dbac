import { shoppingOf, type Event } from '../event';
import { ownKey } from '../buying';
import { removeItem } from './items';
import { inShopping, ownLines } from './lists';
import type { EditResult } from './types';

/** Takes a line of the cook's own off the list, with its price, its mark and its shopper. */
export const removeOwnLine = (event: Event, id: string): EditResult => removeItem(event, ownLines, id, [], (e) => ({
  ...inShopping(e, {
    marks: shoppingOf(e).marks.filter((m) => m.line !== ownKey(id)),
    shoppers: shoppingOf(e).shoppers.filter((s) => s.line !== ownKey(id)),
  }),
  prices: e.prices.filter((p) => p.ingredient !== id),
}));
