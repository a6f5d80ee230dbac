import { allergenIds, type AllergenId, type DietId, type Event } from '../../event';
import type { DishPlan } from '../../menu';
import { fryingOil, ingredient } from '../../reference';
import { usGroups } from '../../safety';

/** What a label says of what is in a dish. Nothing here speaks of a guest. */
export interface LabelContents {
  /** Allergen groups in its ingredients, of those the event's rules have named on labels. */
  readonly contains: readonly AllergenId[];
  /** Ingredients the table does not know: nobody has checked them. */
  readonly unchecked: readonly string[];
  /** Diets it is open to, the wider ones left out when a narrower one says them too. */
  readonly diets: readonly DietId[];
}

/** Allergen groups that have to stand on a label: nine in the United States, else the fourteen of the European Union, which the United Kingdom kept. */
export const labelGroups = (event: Event): readonly AllergenId[] =>
  (event.preferences.safetyProfile === 'us' ? allergenIds.filter((id) => usGroups.includes(id)) : allergenIds);

/** What the foods of a label carry. @param foods ids of ingredients. */
export function contentsOfFoods(event: Event, foods: readonly string[]): Pick<LabelContents, 'contains' | 'unchecked'> {
  const groups = labelGroups(event);
  return {
    contains: groups.filter((id) => foods.some((food) => ingredient(food)?.allergens.includes(id) === true)),
    unchecked: [...new Set(foods.filter((food) => ingredient(food) === undefined))],
  };
}

/** Vegan food is vegetarian and without pork, beef and milk sugar; saying all of it makes the label longer and no wiser. */
const saidBy: Readonly<Partial<Record<DietId, readonly DietId[]>>> = { vegan: ['vegetarian', 'lactoseFree', 'noPork', 'noBeef'], vegetarian: ['noPork', 'noBeef'] };

/** What a dish's label says. */
export function contentsOfDish(event: Event, dish: DishPlan): LabelContents {
  const implied = new Set(dish.diets.flatMap((diet) => saidBy[diet] ?? []));
  const foods = [...dish.recipe.ingredients.map((line) => line.ingredient)];
  return { ...contentsOfFoods(event, foods), diets: dish.diets.filter((diet) => !implied.has(diet)) };
}

/** The oil a dish is fried in: what it carries itself (null: nobody can tell), and the dishes that share it with allergens this dish does not have. */
export interface SharedOil {
  readonly carries: readonly AllergenId[] | null;
  readonly shared: readonly { readonly dish: string; readonly allergens: readonly AllergenId[] }[];
}

/** The frying oil of a dish; null for a dish that is not fried. Dishes share the oil of a pan when their stations do; without stations every fried dish does. */
export function oilOf(event: Event, dish: DishPlan, dishes: readonly DishPlan[]): SharedOil | null {
  if (dish.recipe.frying === undefined) return null;
  const own = labelGroups(event);
  const oil = fryingOil(event.kitchen.oilKind)?.allergens ?? null;
  const stationsOf = (id: string) => event.kitchen.stations.filter((station) => station.dishes.includes(id));
  const pans = new Set(stationsOf(dish.id).flatMap((station) => station.pans));
  const sharesPan = (other: DishPlan): boolean => pans.size === 0 || stationsOf(other.id).length === 0 || stationsOf(other.id).some((station) => station.pans.some((pan) => pans.has(pan)));
  const lacks = (id: AllergenId): boolean => !dish.allergens.includes(id);
  return {
    carries: oil === null ? null : own.filter((id) => oil.includes(id)),
    shared: dishes.filter((other) => other.id !== dish.id && other.recipe.frying !== undefined && sharesPan(other))
      .map((other) => ({ dish: other.name, allergens: own.filter((id) => other.allergens.includes(id) && lacks(id)) })).filter((other) => other.allergens.length > 0),
  };
}

/** Foods that bite (our list; common practice, no source). */
const hot: ReadonlySet<string> = new Set([
  'chilli-powder', 'chilli-blend', 'green-chilli', 'dried-chilli-flakes', 'dried-chilli-whole', 'long-green-pepper', 'black-pepper', 'black-peppercorns', 'curry-powder', 'mustard-seed', 'mustard-ground', 'mustard-prepared', 'mustard-oil',
]);
/** Places in the meal where a guest may expect spice, so that its absence is worth a word. */
const mayBite: ReadonlySet<string> = new Set(['friedSnack', 'friedSide', 'condiment', 'grain', 'pulse', 'vegetable', 'soup', 'salad', 'plain', 'preserve']);

/** Sections of the shop that make a dish savoury: a jug of milk is not called mild. */
const savoury: ReadonlySet<string> = new Set(['vegetables', 'greens', 'pulses', 'spices']);

/** Mild: nothing hot in it, in a savoury dish where there might be, or a plain thing. A dish with a food nobody has checked is not called mild. */
export function isMild(dish: DishPlan): boolean {
  const foods = dish.recipe.ingredients.map((line) => ingredient(line.ingredient));
  return mayBite.has(dish.role) && foods.every((food) => food !== undefined && !hot.has(food.id)) && (dish.role === 'plain' || foods.some((food) => food !== undefined && savoury.has(food.section)));
}

/** Diets that a shared oil takes from a dish: gluten in it, nuts, milk, eggs; an oil nobody has checked may be of nuts. */
export function dietsOilSpoils(oil: SharedOil | null): readonly DietId[] {
  if (oil === null) return [];
  const found = new Set([...(oil.carries ?? ['nuts']), ...oil.shared.flatMap((other) => other.allergens)]);
  const spoils: readonly (readonly [AllergenId, readonly DietId[]])[] = [['gluten', ['glutenFree']], ['nuts', ['nutFree']], ['peanuts', ['nutFree']], ['milk', ['lactoseFree', 'vegan']], ['eggs', ['vegan']], ['fish', ['vegan', 'vegetarian']], ['crustaceans', ['vegan', 'vegetarian']], ['molluscs', ['vegan', 'vegetarian']]];
  return [...new Set(spoils.flatMap(([allergen, diets]) => (found.has(allergen) ? diets : [])))];
}

/** Honey is never for babies under one (rule CD-04). */
export const hasHoney = (dish: DishPlan): boolean => dish.recipe.ingredients.some((line) => line.ingredient.split('-').includes('honey'));
