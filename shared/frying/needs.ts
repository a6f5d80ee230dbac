import type { Need } from '../buying';
import type { Event } from '../event';
import { amountOf } from '../measure';
import type { FryingPlan } from './types';

/** Kinds of oil an event may name and the ingredient bought for each; anything else is bought as sunflower oil. */
const oilIngredient: Readonly<Record<string, string>> = {
  'sunflower-refined': 'sunflower-oil', sunflower: 'sunflower-oil', rapeseed: 'rapeseed-oil', peanut: 'peanut-oil', soybean: 'soybean-oil',
};

/** Origin of the oil in the pans on the shopping list. */
export const fryingOilOrigin = 'frying-oil';

/** What frying uses: the lines of each fried dish for the pieces really fried, and the oil. */
export function fryingNeeds(event: Event, frying: FryingPlan): Need[] {
  const food = frying.fried.flatMap(({ dish, pieces, lines }) => (pieces === 0 ? [] : lines.map((l) => ({ ingredient: l.ingredient, amount: l.amount, origin: dish }))));
  if (frying.buyLitres.value <= 0) return food;
  // Millilitres are as fine as anybody pours; rounding up never buys too little.
  const litres = Math.ceil(frying.buyLitres.value * 1000 - 1e-6) / 1000;
  return [...food, { ingredient: oilIngredient[event.kitchen.oilKind] ?? 'sunflower-oil', amount: amountOf(litres, 'L'), origin: fryingOilOrigin }];
}
