import { Big } from 'big.js';
import type { Event } from '../event';
import { amountFrom, amountOf, amountText, convertFood, type Amount } from '../measure';
import type { Ingredient } from '../reference';
import type { Message } from '../words';
import type { ShoppingLine } from './types';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/** Gas in the bottles of the kitchen: in the house as much as flour in the larder. */
const bottles = (event: Event, id: string): Amount[] => (id === 'gas-bottle' ? event.kitchen.cylinders.map((c) => amountOf(c.gasKg, 'kg')) : []);

/** What the larder holds of a food, in the unit of the list; amounts that cannot be turned into it are not counted (see `notCounted`). */
export function inLarder(event: Event, id: string, row: Ingredient | undefined, unit: Amount['unit']): Amount {
  const amount = [...event.larder.filter((l) => l.ingredient === id).map((l) => amountFrom(l.amount)), ...bottles(event, id)]
    .map((held) => convertFood(held, unit, row ?? noWeights))
    .reduce((sum, a) => (a === null ? sum : sum.plus(a.amount)), new Big(0));
  // Down at the ninth decimal: the larder never covers more than it holds.
  return { amount: amount.round(9, Big.roundDown), unit };
}

/** Where the amount of `inLarder` was entered; null when it is made of several entries or turned from another unit. */
export function larderPath(event: Event, id: string, unit: Amount['unit']): string | null {
  const at = event.larder.findIndex((l) => l.ingredient === id);
  const only = event.larder.filter((l) => l.ingredient === id).length === 1 && bottles(event, id).length === 0;
  return only && event.larder[at]?.amount.unit === unit ? `larder[${at}].amount` : null;
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
