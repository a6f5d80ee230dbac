import type { Step } from '../../event';
import type { DishPlan } from '../../menu';
import type { Subject } from '../rule';

const heats = (t: Step): boolean => t.does === 'boil' || t.does === 'simmer' || t.does === 'bake';
const isCold = (t: Step): boolean => t.keeps?.place === 'cold' || t.keeps?.place === 'freezer';
/** Cooked in a pot or in the oven. */
export const cooks = (d: DishPlan): boolean => d.recipe.steps.some(heats);
/**
 * Kept cold after it was cooked: by the step itself or one that goes on from it; in a recipe whose steps name no order, by one written after it.
 * What is chopped ahead and kept cold is no cooked food, wherever its step is written.
 */
export function keptCold(d: DishPlan): boolean {
  const { steps } = d.recipe;
  if (steps.every((t) => t.after.length === 0)) {
    const first = steps.findIndex(heats);
    return first >= 0 && steps.slice(first).some(isCold);
  }
  const cooked = new Set(steps.filter(heats).map((t) => t.id));
  // Steps may be written in any order: as often as there are steps is enough.
  for (const _ of steps) for (const t of steps) if (t.after.some((id) => cooked.has(id))) cooked.add(t.id);
  return steps.some((t) => cooked.has(t.id) && isCold(t));
}
/** Dishes that need hot or cold. */
export const controlled = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl);
/** Cooked ahead and kept cold: what has to be cooled. */
export const cookedAhead = (s: Subject): readonly DishPlan[] => controlled(s).filter((d) => cooks(d) && keptCold(d));
/** Kilograms (or litres) of a dish; 0 for what is counted. */
export const kilograms = (d: DishPlan): number => (d.totalFigure.unit === 'kg' || d.totalFigure.unit === 'L' ? d.totalFigure.value : d.totalFigure.unit === 'g' || d.totalFigure.unit === 'ml' ? d.totalFigure.value / 1000 : 0);
/** A batch above this cools badly in one pot (rules CO-04 and CO-06, common practice). Litres; a kilogram counts as a litre. */
export const bigBatch = 4;
