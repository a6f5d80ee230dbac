import type { Event } from '../event';
import { removeItem } from './items';
import { dishes, recipes } from './lists';
import type { EditResult } from './types';

/** Takes a recipe out, unless a dish of the menu is made from it. */
export const removeRecipe = (event: Event, id: string): EditResult =>
  removeItem(event, recipes, id, event.menu.dishes.filter((dish) => dish.recipe === id).map((dish) => dishes.nameOf(dish, event)));
