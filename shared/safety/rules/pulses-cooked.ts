import type { DishPlan } from '../../menu';
import { ingredient } from '../../reference';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';
import { lectinBeans } from './beans';

/** Dry chickpeas, lentils, split peas, mung: little lectin, but never raw. Sprouted and ground into a batter they are something else. */
const other = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.broughtBy === undefined && d.recipe.frying === undefined
  && ingredientIds(d).some((i) => ingredient(i)?.section === 'pulses' && !lectinBeans.includes(i)) && !d.recipe.steps.some((t) => t.does === 'sprout'));
/** Minutes on the heat. */
const cookedMinutes = (d: DishPlan): number => d.recipe.steps.filter((t) => t.does === 'boil' || t.does === 'simmer' || t.does === 'bake' || t.does === 'griddle').reduce((sum, t) => sum + Math.max(t.passive.fixed, t.active.fixed) + t.passive.perKg + t.active.perKg + t.passive.perBatch + t.active.perBatch, 0);

/** PR-09: chickpeas, lentils and other dry pulses are cooked until they are soft. No table says how long; a dish without any step on the heat is named. */
export const pulsesCooked: Rule = {
  id: 'PR-09', level: 'caution', title: { id: 'safety.title.PR-09' },
  judge(s) {
    const dishes = other(s);
    const unwritten = dishes.find((d) => d.recipe.steps.length === 0);
    return {
      hits: dishes.filter((d) => d.recipe.steps.length > 0 && cookedMinutes(d) === 0).map((d): Hit => ({ value: 0, unit: 'min', limit: { value: 1, unit: 'min' }, about: [d.id], message: { id: 'safety.say.PR-09', params: { dish: d.name } } })),
      ...(unwritten === undefined ? {} : { needs: { id: 'safety.needs.beanSteps', params: { dish: unwritten.name } } as const }),
    };
  },
};
