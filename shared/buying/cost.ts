import { Big } from 'big.js';
import type { Event } from '../event';
import { amountFrom, amountText, convertFood, type Amount } from '../measure';
import type { Ingredient } from '../reference';
import type { Message } from '../words';
import type { ShoppingLine } from './types';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/** Cost of what is bought, in the event's currency: bought ÷ the amount the price is for × the price. Null without a price that fits. */
export function costOf(event: Event, id: string, row: Ingredient | undefined, buy: Amount): Big | null {
  const price = event.prices.find((p) => p.ingredient === id);
  if (price === undefined) return null;
  const per = convertFood(amountFrom(price.per), buy.unit, row ?? noWeights);
  return per === null || per.amount.lte(0) ? null : buy.amount.div(per.amount).times(price.price);
}

/** What the larder holds of a food, in the unit of the list; amounts that cannot be turned into it are not counted (see `notCounted`). */
export function inLarder(event: Event, id: string, row: Ingredient | undefined, unit: Amount['unit']): Amount {
  const amount = event.larder
    .filter((l) => l.ingredient === id)
    .map((l) => convertFood(amountFrom(l.amount), unit, row ?? noWeights))
    .reduce((sum, a) => (a === null ? sum : sum.plus(a.amount)), new Big(0));
  // Down at the ninth decimal: the larder never covers more than it holds.
  return { amount: amount.round(9, Big.roundDown), unit };
}

/** Larder entries of foods on the list that could be counted against none of their lines: each is named, for the list buys as if they were not there. */
export function notCounted(event: Event, lines: readonly ShoppingLine[], rowOf: (id: string) => Ingredient | undefined): Message[] {
  return event.larder.flatMap((entry): Message[] => {
    const held = amountFrom(entry.amount);
    const own = lines.filter((l) => l.ingredient === entry.ingredient);
    const [line] = own;
    if (line === undefined || held.amount.lte(0)) return [];
    const weights = rowOf(entry.ingredient) ?? noWeights;
    if (own.some((l) => convertFood(held, l.need.unit, weights) !== null)) return [];
    return [{ id: 'buying.notCounted', params: { name: line.name, held: amountText(held), listUnit: line.need.unit } }];
  });
}
