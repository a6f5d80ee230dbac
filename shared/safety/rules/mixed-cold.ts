import type { DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { holdingOf, type Hit, type Rule, type Subject } from '../rule';
import { controlled, cooks } from './cooked-ahead';
import { hoursBetween } from './hours';

const chillHours = safetyRule('CO-02').limit ?? 0;

/** From when a dish is mixed to when it is in the cold: the end of the first step after it that keeps it cold, or its first portion where none does. Minutes; null when it is not mixed, or goes into the cold at once. */
function warmStretch(s: Subject, dish: DishPlan): { readonly from: number; readonly until: number } | null {
  const { steps } = dish.recipe;
  const mixed = steps.findIndex((t) => t.does === 'mix' || t.does === 'grind');
  const step = steps[mixed];
  if (step === undefined || step.keeps?.place === 'cold' || step.keeps?.place === 'freezer') return null;
  const ends = (id: string): number | undefined => s.day.tasks.find((t) => t.id === `step/${id}/${dish.id}`)?.end;
  const from = ends(step.id);
  const cold = steps.slice(mixed + 1).find((t) => t.keeps?.place === 'cold' || t.keeps?.place === 'freezer');
  const until = cold === undefined ? dish.firstServed : ends(cold.id);
  return from === undefined || until === undefined || until === null || until <= from ? null : { from, until };
}

/** CO-02: what is mixed from things at room temperature and eaten cold is cold within four hours. Cooked food is CO-01, batter TC-08. */
export const chilledInTime: Rule = {
  id: 'CO-02', level: 'warn', title: { id: 'safety.title.CO-02' },
  judge: (s) => ({
    hits: controlled(s).filter((d) => !cooks(d) && d.recipe.frying === undefined && d.recipe.brewing === undefined && holdingOf(s, d)?.place === 'cold').flatMap((d): readonly Hit[] => {
      const warm = warmStretch(s, d);
      if (warm === null) return [];
      const hours = hoursBetween(warm.from, warm.until);
      return hours.value > chillHours ? [{ value: hours.value, unit: 'h', figure: hours, about: [d.id], message: { id: 'safety.say.CO-02', params: { dish: d.name, hours: hours.value, limit: chillHours } } }] : [];
    }),
  }),
};
