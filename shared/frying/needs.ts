import type { Need } from '../buying';
import type { Event } from '../event';
import { amountOf } from '../measure';
import { ingredient } from '../reference';
import type { FryingPlan } from './types';

/** Bought when the event names an oil the ingredient table does not know. */
const usualOil = 'sunflower-oil';

/** Origin of the oil in the pans on the shopping list. */
export const fryingOilOrigin = 'frying-oil';

/** The ingredient bought for a kind of oil: `peanut-refined` is `peanut-oil` of the ingredient table. */
export function oilIngredient(kind: string): string {
  const candidates = [kind, `${kind}-oil`, `${kind.replace(/-(refined|cold-pressed|virgin)$/, '')}-oil`];
  return candidates.find((id) => ingredient(id) !== undefined) ?? usualOil;
}

/** What frying uses beside the lines of the dishes, which the menu already counts: the oil of the pans. Origin `frying-oil`. */
export function fryingNeeds(event: Event, frying: FryingPlan): Need[] {
  if (frying.buyLitres.value <= 0) return [];
  // Millilitres are as fine as anybody pours; rounding up never buys too little.
  const litres = Math.ceil(frying.buyLitres.value * 1000 - 1e-6) / 1000;
  return [{ ingredient: oilIngredient(event.kitchen.oilKind), amount: amountOf(litres, 'L'), origin: fryingOilOrigin }];
}
