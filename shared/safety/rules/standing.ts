import type { DishPlan } from '../../menu';
import type { Subject } from '../rule';

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
