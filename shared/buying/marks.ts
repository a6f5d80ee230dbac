import { Big } from 'big.js';
import { shoppingOf, type Event, type ShoppingMark } from '../event';
import { amountFrom, amountText, convertFood, type Amount, type UnitId } from '../measure';
import type { Ingredient } from '../reference';
import type { Message } from '../words';
import type { LineState } from './types';

const noWeights = { gramsPerMl: null, gramsPer: {} };
const nothing = new Big(0);

/** What a cook has noted at a line, in the line's unit. An amount that cannot be turned into it is not counted. */
export interface Noted {
  readonly bought: Big;
  /** What the list asked for at the time; null when that is not on record. */
  readonly asked: Big | null;
  readonly later: boolean;
}

function inUnit(of: ShoppingMark['bought'], row: Ingredient | undefined, unit: UnitId): Big | null {
  // Down at the ninth decimal, as with the larder: what is bought never counts for more than it is.
  return of === undefined ? null : (convertFood(amountFrom(of), unit, row ?? noWeights)?.amount.round(9, Big.roundDown) ?? null);
}

/** Reads the mark of a line; nothing bought and not left for later where there is none. */
export function notedAt(event: Event, key: string, row: Ingredient | undefined, unit: UnitId): Noted {
  const mark = shoppingOf(event).marks.find((m) => m.line === key);
  return { bought: inUnit(mark?.bought, row, unit) ?? nothing, asked: inUnit(mark?.asked, row, unit), later: mark?.later ?? false };
}

/** Where what was bought is noted; null when it is turned from another unit. */
export function boughtPath(event: Event, key: string, unit: UnitId): string | null {
  const at = shoppingOf(event).marks.findIndex((m) => m.line === key);
  return shoppingOf(event).marks[at]?.bought?.unit === unit ? `shopping.marks[${at}].bought` : null;
}

/** How far a line is. `missing`: need less larder less bought. */
export function stateOf({ bought, later }: Noted, missing: Big): LineState {
  if (missing.lte(0)) return bought.gt(0) ? 'bought' : 'house';
  return later ? 'later' : bought.gt(0) ? 'part' : 'open';
}

/**
 * What follows from what was bought. `buy`: what is still to buy; `enough`: what would be bought today had nothing been bought yet.
 * Null while nothing is bought.
 */
export function noteOf({ bought, asked }: Noted, buy: Amount, enough: Big): Message | null {
  if (bought.lte(0)) return null;
  const words = (amount: Big) => amountText({ amount, unit: buy.unit });
  const params = { bought: words(bought), more: amountText(buy) };
  if (buy.amount.gt(0)) return { id: asked !== null && bought.gte(asked) ? 'buying.note.risen' : 'buying.note.part', params };
  return asked !== null && enough.lt(asked) && enough.lt(bought) ? { id: 'buying.note.fallen', params: { bought: words(bought), enough: words(enough) } } : { id: 'buying.note.bought', params };
}
