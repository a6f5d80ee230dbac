import type { Event } from '../event';
import type { MenuPlan } from '../menu';
import type { Need } from './types';

/**
 * What the dishes of the menu use, edible and ready to use: the scaled lines of every recipe. A drink with brewing facts is left to the room
 * `drinks`, whose rounds decide what goes in; the oil of the pans is left to `frying`.
 */
export function needsOfMenu(_event: Event, menu: MenuPlan): Need[] {
  return menu.dishes
    .filter((dish) => dish.recipe.brewing === undefined)
    .flatMap((dish) => dish.lines
      .filter((line) => line.amount.amount.gt(0))
      .map((line): Need => ({ ingredient: line.ingredient, amount: line.amount, origin: dish.id })));
}
