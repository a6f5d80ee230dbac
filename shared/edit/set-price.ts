import { priceSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** What something costs: a decimal string in the event's currency for an amount. */
export interface PriceOf {
  readonly price: string;
  readonly per: { readonly amount: string; readonly unit: string };
}

/** Notes the price of an ingredient; null takes it out. */
export function setPrice(event: Event, ingredient: string, price: PriceOf | null): EditResult {
  const isIt = (row: { readonly ingredient: string }): boolean => row.ingredient === ingredient;
  const name = { id: 'edit.price', params: { ingredient } } as const;
  if (price === null) return settled({ ...event, prices: setRow(event.prices, isIt, null) }, name);
  const checked = checkPart(priceSchema, { ...event.prices.find(isIt), ingredient, ...price }, ['prices', placeOfRow(event.prices, isIt)]);
  return checked.ok ? settled({ ...event, prices: setRow(event.prices, isIt, checked.value) }, name) : checked.problem;
}
