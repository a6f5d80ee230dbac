import type { Event } from '../event';
import type { MenuPlan } from '../menu';
import type { Need } from './types';

/**
 * What the dishes of the menu use, edible and ready to use: the scaled lines of every recipe. A drink with brewing facts is left to the room
 * `drinks`, whose rounds decide what goes in; the oil of the pans is left to `frying`.
 * @param inReserve of which dishes what part is reserve, 0-1: bowls finished only when more come.
 */
export function needsOfMenu(_event: Event, menu: MenuPlan, inReserve: readonly { readonly dish: string; readonly share: number }[] = []): Need[] {
  const shareOf = new Map(inReserve.map((r) => [r.dish, r.share]));
  return menu.dishes
    .filter((dish) => dish.recipe.brewing === undefined)
    .flatMap((dish) => dish.lines
      .filter((line) => line.amount.amount.gt(0))
      .map((line): Need => ({ ingredient: line.ingredient, amount: line.amount, origin: dish.id, ...(shareOf.has(dish.id) ? { reserve: shareOf.get(dish.id) ?? 0 } : {}) })));
}
