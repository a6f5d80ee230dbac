import type { DrinkLine } from './drink-line';
import { ingredientsOf, linesOf, otherLiquids } from './round-lines';
import { waterForServed } from './rules';
import type { UnbrewedDrink } from './types';

/** What is wanted and not brewed, with what it would take. What would boil away is not known without a burner, and is left out. */
export function unbrewedOf({ dish, brewing, unmetLitres: litres }: DrinkLine): UnbrewedDrink[] {
  if (litres < 1e-6) return [];
  const water = waterForServed(litres / (1 - brewing.strainLoss), brewing.doseGPerL, brewing.absorbMlPerG, 0) - otherLiquids(linesOf(dish, brewing, litres));
  return [{ drink: dish.id, litres, ingredients: ingredientsOf(dish, brewing, litres, Math.max(0, water)) }];
}
