import { lowest } from '../../measure';
import { ingredient, safetyRule } from '../../reference';
import type { DishPlan } from '../../menu';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';
import { fullMinutes, hotDispensers } from './cup';

const targetC = safetyRule('ED-03a').limit ?? 0;
const limitC = safetyRule('ED-03b').limit ?? 0;
/** Minutes below the limit after which the drink is thrown away (rule ED-03). */
const allowed = 120;

const withMilk = (dish: DishPlan): boolean =>
  (dish.recipe.brewing?.milkShare ?? 0) > 0 || ingredientIds(dish).some((i) => ingredient(i)?.allergens.includes('milk') === true);

interface MilkFlask { readonly id: string; readonly dish: DishPlan; readonly coolest: number; readonly minutesBelow: number }

function flasks(s: Subject): readonly MilkFlask[] {
  return hotDispensers(s).filter(({ dish }) => withMilk(dish)).map(({ dispenser, dish }) => {
    const temperatures = fullMinutes(dispenser).map((m) => m.celsius);
    return { id: dispenser.id, dish, coolest: lowest(temperatures), minutesBelow: temperatures.filter((c) => c < limitC).length };
  });
}

/** ED-03a: a drink with milk in it stays at 60 °C or hotter in the flask. */
export const milkCools: Rule = {
  id: 'ED-03a', level: 'warn', title: { id: 'safety.title.ED-03a' },
  judge: (s) => ({
    hits: flasks(s).filter((f) => f.coolest < targetC && f.minutesBelow <= allowed)
      .map((f): Hit => ({ value: f.coolest, unit: 'degC', about: [f.id, f.dish.id], message: { id: 'safety.say.ED-03a', params: { drink: f.dish.name, celsius: f.coolest } } })),
  }),
};

/** ED-03b: a drink with milk in it that is under 57 °C for more than two hours is thrown away. */
export const milkCold: Rule = {
  id: 'ED-03b', level: 'stop', title: { id: 'safety.title.ED-03b' },
  judge: (s) => ({
    hits: flasks(s).filter((f) => f.minutesBelow > allowed)
      .map((f): Hit => ({ value: f.coolest, unit: 'degC', about: [f.id, f.dish.id], message: { id: 'safety.say.ED-03b', params: { drink: f.dish.name, minutes: f.minutesBelow } } })),
  }),
};
