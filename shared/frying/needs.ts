import type { Need } from '../buying';
import type { Event } from '../event';
import { amountOf } from '../measure';
import { fryingOil, ingredient, unknownOilId } from '../reference';
import type { FryingPlan } from './types';

/** Origin of the oil in the pans on the shopping list. */
export const fryingOilOrigin = 'frying-oil';

/** What to buy for the pans. An oil the tables do not know is bought under its own name, never another in its place. */
function oilToBuy(kind: string): Pick<Need, 'ingredient' | 'name'> {
  const oil = fryingOil(kind);
  if (oil !== null) return { ingredient: oil.ingredient, name: oil.name };
  const name = kind.trim();
  return { ingredient: unknownOilId(kind, (id) => ingredient(id) !== undefined), ...(name === '' ? {} : { name }) };
}

/** What frying uses beside the lines of the dishes, which the menu already counts: the oil of the pans. Origin `frying-oil`. */
export function fryingNeeds(event: Event, frying: FryingPlan): Need[] {
  if (frying.buyLitres.value <= 0) return [];
  // Millilitres are as fine as anybody pours; rounding up never buys too little.
  const litres = Math.ceil(frying.buyLitres.value * 1000 - 1e-6) / 1000;
  return [{ ...oilToBuy(event.kitchen.oilKind), amount: amountOf(litres, 'L'), origin: fryingOilOrigin }];
}
