import { isMadeAhead } from '../drinks';
import type { Recipe, Step } from '../event';

/** Whole minutes of a step's work or waiting for so many kilograms in so many batches; 0 when it has none. */
export function stepMinutes(m: Step['active'], kg: number, batches: number): number {
  const sum = m.fixed + m.perKg * kg + m.perBatch * batches;
  return sum > 0 ? Math.max(1, Math.ceil(sum - 1e-9)) : 0;
}

/** True for a dish of the meal: not fried and no drink, which have plans of their own. */
export const isMealRecipe = (recipe: Recipe): boolean => recipe.frying === undefined && recipe.brewing === undefined && !isMadeAhead(recipe);

/** Steps no other step waits for: when they end, the dish is ready. */
export function finalSteps({ steps }: Recipe): readonly Step[] {
  const waitedFor = new Set(steps.flatMap((s) => s.after));
  return steps.filter((s) => !waitedFor.has(s.id));
}

/** True for a step that stands in a pot. */
export const usesPot = (step: Step): boolean => step.needs.some((n) => n.thing === 'pot');
