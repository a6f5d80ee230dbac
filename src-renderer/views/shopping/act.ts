import { markBought, markLater, setLarder, setPrice, setShopper, type EditResult } from '../../../shared/edit';
import type { Event } from '../../../shared/event';
import { amountText } from '../../../shared/measure';
import type { ShoppingLine } from '../../../shared/buying';
import type { Message } from '../../../shared/words';
import { documentStore } from '../../app/store';

/** Does an edit on the open event; answers what is wrong with it, or null. */
function act(edit: (event: Event) => EditResult): Message | null {
  const open = documentStore.get();
  return open === null ? null : documentStore.edit(edit(open.event));
}

const textOf = (line: ShoppingLine, amount: number) => ({ amount: amount.toFixed(6).replace(/\.?0+$/, ''), unit: line.need.unit });

/** How much of a line's ingredient is in the house, in the line's unit; null for none. */
export const setInHouse = (line: ShoppingLine, amount: number | null): Message | null =>
  act((event) => setLarder(event, line.ingredient, amount === null || amount === 0 ? null : textOf(line, amount), line.need.unit));

/** All that the list asks for of a line is bought, or none of it. */
export const setAllBought = (line: ShoppingLine, all: boolean): Message | null => {
  const asked = amountText({ amount: line.bought.amount.plus(line.buy.amount), unit: line.buy.unit });
  return act((event) => markBought(event, line, all ? asked : null, asked));
};

/** So much of a line is bought. */
export const setBoughtSoFar = (line: ShoppingLine, amount: number | null): Message | null =>
  act((event) => markBought(event, line, amount === null || amount === 0 ? null : textOf(line, amount), amountText({ amount: line.bought.amount.plus(line.buy.amount), unit: line.buy.unit })));

/** Leaves a line for a later trip, or not. */
export const setLater = (line: ShoppingLine, later: boolean): Message | null => act((event) => markLater(event, line, later));

/** What one pack of it costs; null when it is not known. */
export const setPackPrice = (line: ShoppingLine, price: number | null): Message | null =>
  act((event) => setPrice(event, line.ingredient, price === null ? null : { price: price.toFixed(2), per: amountText(line.price.per) }));

/** Who buys a line; an empty name is nobody in particular. */
export const setWho = (line: ShoppingLine, who: string): Message | null => act((event) => setShopper(event, { line: line.key, name: line.name }, who === '' ? null : who));
