import { Big } from 'big.js';
import type { Event } from '../event';
import { convertFood, isUnitId, type Amount } from '../measure';
import type { Ingredient } from '../reference';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/** Cost of what is bought, in the event's currency: bought ÷ the amount the price is for × the price. Null without a price that fits. */
export function costOf(event: Event, id: string, row: Ingredient | undefined, buy: Amount): Big | null {
  const price = event.prices.find((p) => p.ingredient === id);
  if (price === undefined || !isUnitId(price.per.unit)) return null;
  const per = convertFood({ amount: new Big(price.per.amount), unit: price.per.unit }, buy.unit, row ?? noWeights);
  return per === null || per.amount.lte(0) ? null : buy.amount.div(per.amount).times(price.price);
}

/** What the larder holds of a food, in the unit of the list; amounts that cannot be turned into it are not counted. */
export function inLarder(event: Event, id: string, row: Ingredient | undefined, unit: Amount['unit']): Amount {
  const amount = event.larder
    .filter((l) => l.ingredient === id)
    .map((l) => (isUnitId(l.amount.unit) ? convertFood({ amount: new Big(l.amount.amount), unit: l.amount.unit }, unit, row ?? noWeights) : null))
    .reduce((sum, a) => (a === null ? sum : sum.plus(a.amount)), new Big(0));
  // Down at the ninth decimal: the larder never covers more than it holds.
  return { amount: amount.round(9, Big.roundDown), unit };
}
