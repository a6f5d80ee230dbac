import { allergenIds, dietIds, type AllergenId, type DietId, type Event } from '../../event';
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

/** The oil a dish is fried in: what it carries itself (null: nobody can tell), and what the dishes that share it carry and this dish does not. */
export interface SharedOil {
  readonly carries: readonly AllergenId[] | null;
  readonly shared: readonly { readonly dish: string; readonly allergens: readonly AllergenId[] }[];
  /** Diets this oil is not for: against the oil itself, or against a dish fried in it. An oil nobody has checked may be of nuts. */
  readonly against: readonly string[];
}

/** True when two dishes may meet in one pan of oil: their stations share a pan; without stations every fried dish does. */
function shareOil(event: Event, a: DishPlan, b: DishPlan): boolean {
  const pansOf = (dish: DishPlan): readonly string[] => event.kitchen.stations.filter((station) => station.dishes.includes(dish.id)).flatMap((station) => station.pans);
  const [own, others] = [pansOf(a), pansOf(b)];
  return own.length === 0 || others.length === 0 || own.some((pan) => others.includes(pan));
}

/** The frying oil of a dish; null for a dish that is not fried. */
export function oilOf(event: Event, dish: DishPlan, dishes: readonly DishPlan[]): SharedOil | null {
  if (dish.recipe.frying === undefined) return null;
  const groups = labelGroups(event);
  const oil = fryingOil(event.kitchen.oilKind);
  const others = dishes.filter((other) => other.id !== dish.id && other.recipe.frying !== undefined && other.portions.value > 0 && shareOil(event, dish, other));
  const { allergens } = oil ?? { allergens: null };
  return {
    carries: allergens === null ? null : groups.filter((id) => allergens.includes(id)),
    shared: others.map((other) => ({ dish: other.name, allergens: groups.filter((id) => other.allergens.includes(id) && !dish.allergens.includes(id)) })).filter((other) => other.allergens.length > 0),
    against: dietIds.filter((diet) => others.some((other) => !other.diets.includes(diet)) || (oil !== null && ingredient(oil.ingredient)?.against.includes(diet) === true)
      || (diet === 'nutFree' && (allergens === null || allergens.includes('nuts') || allergens.includes('peanuts')))
      || ((diet === 'vegan' || diet === 'lactoseFree') && allergens?.includes('milk') === true)),
  };
}

/** What a dish's label says; its oil counts for the diets. */
export function contentsOfDish(event: Event, dish: DishPlan, dishes: readonly DishPlan[]): LabelContents {
  const against = oilOf(event, dish, dishes)?.against ?? [];
  const open = dish.diets.filter((diet) => !against.includes(diet));
  const implied = new Set(open.flatMap((diet) => saidBy[diet] ?? []));
  return { ...contentsOfFoods(event, dish.recipe.ingredients.map((line) => line.ingredient)), diets: open.filter((diet) => !implied.has(diet)) };
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

/** Honey is never for babies under one (rule CD-04). */
export const hasHoney = (dish: DishPlan): boolean => dish.recipe.ingredients.some((line) => line.ingredient.split('-').includes('honey'));
