import type { Dish, Event, Recipe } from '../event';
import { amountFrom, convert, dimensionOf } from '../measure';
import { drinksOf, type Drink } from './drink-share';
import { helping, servedAs, type Helping, type ServedAs } from './portion';

/** A dish of the menu with its recipe and what one adult is given of it. */
export interface Course {
  readonly dish: Dish;
  /** Place in `menu.dishes`. */
  readonly index: number;
  readonly recipe: Recipe;
  readonly servedAs: ServedAs;
  readonly helping: Helping;
}

/** The menu laid out: all courses in menu order, and the drinks that share the cups. */
export interface Table {
  readonly event: Event;
  readonly courses: readonly Course[];
  readonly drinks: readonly Drink[];
}

/** A drink whose cup the cook set for this menu is brewed and poured by that cup. */
function withOwnCup(dish: Dish, recipe: Recipe): Recipe {
  if (dish.portion === undefined || recipe.brewing === undefined || dimensionOf(dish.portion.unit) !== 'volume') return recipe;
  return { ...recipe, brewing: { ...recipe.brewing, cupMl: convert(amountFrom(dish.portion), 'ml').amount.toNumber() } };
}

/** Lays out the menu. A dish whose recipe is not in the event is left out; reading the file has named it. */
export function layTable(event: Event): Table {
  const recipes = new Map(event.recipes.map((r) => [r.id, r]));
  const courses = event.menu.dishes.flatMap((dish, index): Course[] => {
    const found = recipes.get(dish.recipe);
    if (found === undefined) return [];
    const recipe = withOwnCup(dish, found);
    return [{ dish, index, recipe, servedAs: servedAs(recipe), helping: helping(event, dish, recipe) }];
  });
  return { event, courses, drinks: drinksOf(courses) };
}
