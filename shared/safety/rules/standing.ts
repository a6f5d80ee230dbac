import type { DishPlan } from '../../menu';
import { ingredientIds, type Subject } from '../rule';

/** True for a dish cooked from rice grains; rice flour is no rice dish. */
export const isRice = (dish: DishPlan): boolean =>
  dish.recipe.frying === undefined && dish.recipe.brewing === undefined && ingredientIds(dish).some((i) => i.endsWith('rice'));

/**
 * Minutes a dish stands before its last portion: from the end of its last step that is ready before it is served (or from its first portion).
 * Returns null when nobody is served.
 */
export function minutesOut(s: Subject, dish: DishPlan): number | null {
  if (dish.firstServed === null || dish.lastServed === null) return null;
  const first = dish.firstServed;
  const ready = s.day.tasks.filter((t) => t.kind === 'step' && t.dish === dish.id && t.end <= first).map((t) => Number(t.end));
  return dish.lastServed - (ready.length === 0 ? first : Math.max(...ready));
}
