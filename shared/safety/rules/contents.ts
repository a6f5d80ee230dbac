import type { AllergyCover, DishPlan } from '../../menu';
import { fryingOil, ingredient } from '../../reference';
import type { Message } from '../../words';
import { ingredientIds, type Subject } from '../rule';

/** First ingredient of a dish that the table does not know; undefined when all are known. */
const unknownIn = (dish: DishPlan): string | undefined => ingredientIds(dish).find((i) => ingredient(i) === undefined);

/** Which dishes cannot be judged for the guests' allergies, for they have an ingredient of unknown contents; undefined when none, or nobody listed an allergy. */
export function needsContents(allergies: readonly AllergyCover[], dishes: readonly DishPlan[]): { readonly needs?: Message } {
  const unknown = dishes.flatMap((d) => {
    const name = unknownIn(d);
    return name === undefined ? [] : [{ dish: d.name, ingredient: name }];
  });
  const [first] = unknown;
  if (first === undefined || allergies.length === 0) return {};
  return { needs: { id: 'safety.needs.contents', params: { allergens: allergies.map((a) => a.allergen), ...first, others: unknown.length - 1 } } };
}

/** Dishes of the menu that are fried in a pan of the kitchen. */
export const friedIn = (s: Subject, pan: string): readonly DishPlan[] =>
  s.menu.dishes.filter((d) => s.event.kitchen.stations.some((t) => t.pans.includes(pan) && t.dishes.includes(d.id)));

/** Whether the frying oil carries an allergen; null when nobody can tell. */
export function oilCarries(s: Subject, allergen: string): boolean | null {
  const oil = fryingOil(s.event.kitchen.oilKind);
  return oil === null || oil.allergens === null ? null : oil.allergens.includes(allergen);
}

/** Dishes known to be without an allergen: their ingredients, and the oil they are fried in. */
export const openTo = (s: Subject, { allergen, open }: AllergyCover): readonly string[] => {
  if (oilCarries(s, allergen) === false) return open;
  return open.filter((id) => s.menu.dishes.find((d) => d.id === id)?.recipe.frying === undefined);
};
