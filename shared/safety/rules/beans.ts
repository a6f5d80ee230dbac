import type { Step } from '../../event';
import type { DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { ingredientIds, type Rule, type Subject } from '../rule';

/** Dry beans that carry the lectin (FDA Bad Bug Book as quoted, rule PR-01); the second line takes the same steps as a precaution (from memory). */
export const lectinBeans: readonly string[] = [
  'kidney-beans-dry', 'white-beans-dry', 'broad-beans-dry',
  'black-beans-dry', 'borlotti-beans-dry', 'black-eyed-beans-dry',
];
/** Soak of rule PR-01: five hours, water thrown away. */
const soakLimit = 300;
const boilLimit = safetyRule('PR-01').limit ?? 0;

/** Minutes a step runs at least, whatever the size. */
const runs = (step: Step): number => Math.max(step.passive.fixed, step.active.fixed);
const total = (steps: readonly Step[], does: Step['does']): number => steps.filter((t) => t.does === does).reduce((sum, t) => sum + runs(t), 0);

const beanDishes = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => ingredientIds(d).some((i) => lectinBeans.includes(i)));
const neverBoils = (dish: DishPlan): boolean => total(dish.recipe.steps, 'boil') === 0;
const slowCooks = (dish: DishPlan): boolean => neverBoils(dish) && dish.recipe.steps.some((t) => t.does === 'simmer' || t.does === 'bake');
const unwritten = (s: Subject) => {
  const dish = beanDishes(s).find((d) => d.recipe.steps.length === 0);
  return dish === undefined ? {} : { needs: { id: 'safety.needs.beanSteps', params: { dish: dish.name } } as const };
};

/** PR-01: kidney beans soak five hours and boil hard for thirty minutes. No quick soak. */
export const kidneyBeans: Rule = {
  id: 'PR-01', level: 'stop', title: { id: 'safety.title.PR-01' },
  judge: (s) => ({
    ...unwritten(s),
    hits: beanDishes(s).filter((d) => d.recipe.steps.length > 0 && !slowCooks(d)).flatMap((d) => {
      const soak = total(d.recipe.steps, 'soak');
      const boil = total(d.recipe.steps, 'boil');
      if (soak >= soakLimit && boil >= boilLimit) return [];
      const message = { id: 'safety.say.PR-01', params: { dish: d.name, soak, boil } } as const;
      return [boil < boilLimit
        ? { value: boil, unit: 'min', about: [d.id], message }
        : { value: soak, unit: 'min', limit: { value: soakLimit, unit: 'min' }, about: [d.id], message }];
    }),
  }),
};

/** PR-02: kidney beans are never only simmered or slow-cooked from raw. */
export const slowCookedBeans: Rule = {
  id: 'PR-02', level: 'stop', title: { id: 'safety.title.PR-02' },
  judge: (s) => ({
    ...unwritten(s),
    hits: beanDishes(s).filter(slowCooks).map((d) => ({ value: 0, unit: 'min', about: [d.id], message: { id: 'safety.say.PR-02', params: { dish: d.name } } })),
  }),
};

/** A soak longer than this in a room warmer than `warmRoomC` belongs in the fridge (common practice, no source; rule PR-03). */
const longSoak = 240;
const warmRoomC = 21;

/** PR-03: long soaks in a warm kitchen go into the fridge. */
export const warmSoak: Rule = {
  id: 'PR-03', level: 'caution', title: { id: 'safety.title.PR-03' },
  judge: (s) => ({
    hits: s.event.kitchen.roomC <= warmRoomC ? [] : s.menu.dishes.flatMap((d) => {
      const soak = total(d.recipe.steps, 'soak');
      return soak > longSoak ? [{ value: soak, unit: 'min', limit: { value: longSoak, unit: 'min' }, about: [d.id], message: { id: 'safety.say.PR-03', params: { dish: d.name, soak } } } as const] : [];
    }),
  }),
};
