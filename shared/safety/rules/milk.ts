import { lowest } from '../../measure';
import { ingredient, safetyRule } from '../../reference';
import type { DishPlan } from '../../menu';
import { limitsOf } from '../profile';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';
import { fullMinutes, hotDispensers } from './cup';

const targetC = safetyRule('ED-03a').limit ?? 0;
/** 60 °C, or 63 where the set of rules asks for it. */
const aimOf = (s: Subject): number => Math.max(targetC, limitsOf(s.event).hotTarget);
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

/** ED-03a: a drink with milk in it stays at 60 °C or hotter in the flask; 63 °C under the United Kingdom's rules. */
export const milkCools: Rule = {
  id: 'ED-03a', level: 'warn', title: { id: 'safety.title.ED-03a' },
  judge: (s) => ({
    hits: flasks(s).filter((f) => f.coolest < aimOf(s) && f.minutesBelow <= allowed)
      .map((f): Hit => ({ value: f.coolest, unit: 'degC', limit: { value: aimOf(s), unit: 'degC' }, about: [f.id, f.dish.id], message: { id: 'safety.say.ED-03a', params: { drink: f.dish.name, celsius: f.coolest, aim: aimOf(s) } } })),
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

/** ED-08: plastic insulated dispensers are not made for milk unless they say so: milk sticks in taps and seals. */
export const milkDispenser: Rule = {
  id: 'ED-08', level: 'caution', title: { id: 'safety.title.ED-08' },
  judge: (s) => ({
    hits: s.event.kitchen.dispensers.filter((d) => d.insulation === 'foam' && !d.fitForMilk).flatMap((d): readonly Hit[] => {
      const dish = s.menu.dishes.find((m) => m.id === d.dish);
      return dish === undefined || !withMilk(dish) ? [] : [{ value: 1, unit: '', limit: { value: 0, unit: '' }, about: [d.id, dish.id], message: { id: 'safety.say.ED-08', params: { dispenser: d.name, drink: dish.name } } }];
    }),
  }),
};
