import { allergenIds, dietIds, type AllergenId, type DietId, type Event, type Recipe } from '../event';
import { ingredient, type Ingredient } from '../reference';
import type { AllergyCover, DietCover, DishPlan } from './types';

/** What is known of a recipe's ingredients. `complete` is false when the table does not know one of them. */
export interface Contents {
  readonly allergens: readonly AllergenId[];
  readonly diets: readonly DietId[];
  readonly complete: boolean;
}

/** Allergens and open diets of a recipe. A recipe with an ingredient the table does not know is declared open to no diet. */
export function contentsOf(recipe: Recipe): Contents {
  const rows: (Ingredient | undefined)[] = recipe.ingredients.map((line) => ingredient(line.ingredient));
  const known = rows.filter((r) => r !== undefined);
  const complete = known.length === rows.length;
  return {
    allergens: allergenIds.filter((a) => known.some((r) => r.allergens.includes(a))),
    diets: complete ? dietIds.filter((d) => !known.some((r) => r.against.includes(d))) : [],
    complete,
  };
}

const isDrink = (dish: DishPlan): boolean => dish.servedAs === 'cup';

/** For each diet among the guests: the dishes open to it. */
export const dietCovers = (event: Event, dishes: readonly DishPlan[]): DietCover[] =>
  event.guests.diets.map(({ diet, people }) => ({
    diet, people, open: dishes.filter((d) => !isDrink(d) && d.diets.includes(diet)).map((d) => d.id),
  }));

/** For each allergy among the guests: what carries it (drinks too), and the dishes left. A dish with an unknown ingredient is in neither list. */
export function allergyCovers(event: Event, dishes: readonly DishPlan[]): AllergyCover[] {
  const complete = new Set(dishes.filter((d) => contentsOf(d.recipe).complete).map((d) => d.id));
  return event.guests.allergies.map(({ allergen, people }) => ({
    allergen, people,
    containing: dishes.filter((d) => d.allergens.includes(allergen)).map((d) => d.id),
    open: dishes.filter((d) => !isDrink(d) && complete.has(d.id) && !d.allergens.includes(allergen)).map((d) => d.id),
  }));
}
