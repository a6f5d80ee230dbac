import type { Event } from '../event';
import { divide, figure, plus, rounded, times, worked, type Figure } from '../figure';
import { addMoney, amountFrom, convertFood, moneyText, type Amount } from '../measure';
import type { Ingredient } from '../reference';
import type { LinePrice, ShoppingLine } from './types';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/**
 * The price of a food or thing. Without one, the amount a price would be asked for: `pack`.
 * @param pack the pack a cook looks at in the shop, in the unit of the list.
 */
export function priceOf(event: Event, id: string, row: Ingredient | undefined, pack: Amount): LinePrice {
  const price = event.prices.find((p) => p.ingredient === id);
  if (price === undefined) return { price: null, per: pack };
  const per = convertFood(amountFrom(price.per), pack.unit, row ?? noWeights);
  return per === null || per.amount.lte(0) ? { price: null, per: pack } : { price: price.price, per };
}

/** Cost of what is bought, in the event's currency: bought ÷ the amount the price is for × the price. Null without a price that fits. */
export const costOf = ({ price, per }: LinePrice, buy: Amount): string | null =>
  (price === null || per.unit !== buy.unit ? null : moneyText(buy.amount.times(price).div(per.amount)));

/** The cost as a figure: `buy` × price ÷ per, to the cent. */
export function costFigure(event: Event, id: string, cost: string, { price, per }: LinePrice, buy: Amount): Figure {
  const at = Math.max(0, event.prices.findIndex((p) => p.ingredient === id));
  return figure(Number(cost), 'money', () => ({
    rule: 'buying.cost',
    terms: [
      { key: 'buy', label: { word: 'buying.term.buy' }, value: buy.amount.toNumber(), unit: buy.unit, origin: { kind: 'computed', method: 'buying.method.line' } },
      { key: 'price', label: { word: 'buying.term.price' }, value: Number(price ?? 0), unit: 'money', origin: { kind: 'entered', path: `prices[${at}].price` } },
      { key: 'per', label: { word: 'buying.term.per' }, value: per.amount.toNumber(), unit: per.unit, origin: event.prices[at]?.per.unit === per.unit ? { kind: 'entered', path: `prices[${at}].per` } : { kind: 'computed', method: 'buying.method.held' } },
    ],
    // The crumb lets half a cent go up as exact money does, whatever floating point makes of it.
    sum: divide(rounded(plus(divide(times('buy', 'price', 100), 'per'), 1e-7)), 100),
  }));
}

/** What is still to buy, of the lines with a price: the costs of the list added up. Null when no line has one. */
export function totalCost(lines: readonly ShoppingLine[]): { readonly cost: string; readonly figure: Figure } | null {
  const priced = lines.flatMap((l) => (l.costFigure === undefined || l.cost === undefined ? [] : [{ name: l.name, cost: l.cost, figure: l.costFigure }]));
  if (priced.length === 0) return null;
  const cost = addMoney(...priced.map((l) => l.cost));
  return {
    cost,
    figure: figure(Number(cost), 'money', () => {
      const terms = priced.map((l, i) => worked(`c${i}`, { text: l.name }, l.figure));
      return { rule: 'buying.total', terms, sum: plus(...terms.map((t) => t.key)) };
    }),
  };
}
