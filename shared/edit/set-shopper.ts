import { shopperSchema, shoppingOf, type Event, type Shopper } from '../event';
import { checkPart, settled } from './check';
import { inShopping } from './lists';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** What somebody buys: one line, or all of a section that has no shopper of its own. `name` as the cook calls it. */
export type Bought = { readonly line: string; readonly name: string } | { readonly section: string; readonly name: string };

/** Names who buys a line or a section: the id of a helper or any name; null for nobody in particular. */
export function setShopper(event: Event, what: Bought, who: string | null): EditResult {
  const { shoppers } = shoppingOf(event);
  const isIt = (s: Shopper): boolean => ('line' in what ? s.line === what.line : s.line === undefined && s.section === what.section);
  const name = { id: 'buying.edit.shopper', params: { name: what.name, who: who === null ? null : (event.people.find((p) => p.id === who)?.name ?? who) } } as const;
  if (who === null) return settled(inShopping(event, { shoppers: setRow(shoppers, isIt, null) }), name);
  const place = 'line' in what ? { line: what.line } : { section: what.section };
  const checked = checkPart(shopperSchema, { ...place, who }, ['shopping', 'shoppers', placeOfRow(shoppers, isIt)]);
  return checked.ok ? settled(inShopping(event, { shoppers: setRow(shoppers, isIt, checked.value) }), name) : checked.problem;
}
