import type { Event } from '../event';
import { addDish } from './add-dish';
import { addRecipe } from './add-recipe';
import { changeDish } from './change-dish';
import { freshId } from './fresh-id';
import { gone } from './items';
import { dishes } from './lists';
import type { EditResult } from './types';

/** Leaf and grounds that are sold without caffeine too: the row of the one by the row of the other. */
const withoutCaffeine: Readonly<Record<string, string>> = { 'tea-leaf': 'tea-leaf-decaf', 'coffee-ground': 'coffee-ground-decaf' };

/** Whether a dish can be offered without caffeine as well: a drink with caffeine whose leaf or grounds are sold without. */
export function canOfferDecaf(event: Event, dishId: string): boolean {
  const recipe = event.recipes.find((r) => r.id === event.menu.dishes.find((d) => d.id === dishId)?.recipe);
  return recipe?.brewing?.caffeinated === true && Object.hasOwn(withoutCaffeine, recipe.brewing.doseIngredient ?? '');
}

/**
 * Offers a share of a drink without caffeine: a recipe and a dish of its own beside it, its leaf or grounds exchanged; together the two are
 * taken by as many as the one was before. One step to undo.
 * @param share part of those who take the drink, above 0 and below 1.
 * @param name of the new drink.
 */
export function offerDecaf(event: Event, dishId: string, share: number, name: string): EditResult {
  const dish = event.menu.dishes.find((d) => d.id === dishId);
  const recipe = event.recipes.find((r) => r.id === dish?.recipe);
  const brewing = recipe?.brewing;
  const dose = brewing?.doseIngredient ?? '';
  if (dish === undefined || recipe === undefined || brewing === undefined || !canOfferDecaf(event, dishId)) return gone(dishes, dishId);
  const instead = withoutCaffeine[dose] ?? dose;
  const { name: _ownName, ...unnamed } = dish;
  const id = freshId(event.recipes, `${recipe.id}-decaf`);
  const steps: readonly ((e: Event) => EditResult)[] = [
    (e) => addRecipe(e, {
      ...recipe, id, name, brewing: { ...brewing, caffeinated: false, doseIngredient: instead },
      ingredients: recipe.ingredients.map((line) => (line.ingredient === dose ? { ...line, ingredient: instead } : line)),
    }),
    (e) => addDish(e, { ...unnamed, id: freshId(e.menu.dishes, `${dish.id}-decaf`), recipe: id, takeUp: dish.takeUp * share }),
    (e) => changeDish(e, dish.id, { takeUp: dish.takeUp * (1 - share) }),
  ];
  let now: Event = event;
  for (const step of steps) {
    const answer = step(now);
    if ('problem' in answer) return answer;
    now = answer.event;
  }
  return { event: now, name: { id: 'edit.offerDecaf', params: { drink: dishes.nameOf(dish, event) } } };
}
