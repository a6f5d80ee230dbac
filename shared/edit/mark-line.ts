import { shoppingMarkSchema, shoppingOf, type Event, type ShoppingMark } from '../event';
import type { Message } from '../words';
import { checkPart, patched, settled } from './check';
import { inShopping } from './lists';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** A line of the shopping list: its key, and what the cook calls it. */
export interface LineRef {
  readonly key: string;
  readonly name: string;
}

/** Patches the mark of a line; a mark that then says nothing is taken out. */
function marked(event: Event, { key }: LineRef, patch: Readonly<Record<string, unknown>>, name: Message): EditResult {
  const { marks } = shoppingOf(event);
  const isIt = (m: ShoppingMark): boolean => m.line === key;
  const next = patched(marks.find(isIt) ?? {}, patch);
  if (next['bought'] === undefined && next['later'] !== true) return settled(inShopping(event, { marks: setRow(marks, isIt, null) }), name);
  const checked = checkPart(shoppingMarkSchema, { ...next, line: key }, ['shopping', 'marks', placeOfRow(marks, isIt)]);
  return checked.ok ? settled(inShopping(event, { marks: setRow(marks, isIt, checked.value) }), name) : checked.problem;
}

/** An amount as it stands in a file. */
export interface AmountIn { readonly amount: string; readonly unit: string }

/**
 * Notes what of a line is bought; null for nothing.
 * @param asked what the list asks for in all at this moment (bought and still to buy), so that a risen need can be told apart later.
 */
export const markBought = (event: Event, line: LineRef, bought: AmountIn | null, asked?: AmountIn): EditResult => marked(
  event, line, bought === null ? { bought: undefined, asked: undefined } : { bought, asked },
  { id: bought === null ? 'buying.edit.notBought' : 'buying.edit.bought', params: { name: line.name } },
);

/** Leaves a line for a later trip, or takes it back into this one. */
export const markLater = (event: Event, line: LineRef, later: boolean): EditResult =>
  marked(event, line, { later }, { id: later ? 'buying.edit.later' : 'buying.edit.notLater', params: { name: line.name } });
