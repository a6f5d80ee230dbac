import { ingredient, safetyRule } from '../../reference';
import type { DishPlan } from '../../menu';
import { holdingOf, ingredientIds, type Hit, type Rule, type Subject } from '../rule';
import { factRule, needsFact } from './facts';

const shellEggs = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.broughtBy === undefined && ingredientIds(d).includes('egg'));
const eggsC = safetyRule('CH-04').limit ?? 0;
/** CH-04: shell eggs stand in a fridge at 7 °C or colder. What is measured is the fridge, or the room they stand in. */
export const chilledEggs: Rule = {
  id: 'CH-04', level: 'warn', title: { id: 'safety.title.CH-04' },
  judge(s) {
    const dishes = shellEggs(s);
    if (dishes.length === 0) return { hits: [] };
    const chilled = s.event.precautions?.eggsChilled;
    if (chilled === undefined) return { hits: [], needs: needsFact('eggsChilled') };
    const celsius = chilled ? s.event.kitchen.fridgeC : s.event.kitchen.roomC;
    if (celsius === null) return { hits: [], needs: { id: 'safety.needs.fridge', params: { dishes: dishes.length, first: dishes[0]?.name ?? '' } } };
    return { hits: celsius > eggsC ? [{ value: celsius, unit: 'degC', about: dishes.map((d) => d.id), message: { id: 'safety.say.CH-04', params: { celsius, limit: eggsC } } }] : [] };
  },
};

/** Cooked here and to wait hot; fried pieces and drinks have rules of their own. */
const heldHot = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.broughtBy === undefined && d.recipe.needsTemperatureControl && d.recipe.frying === undefined && d.recipe.brewing === undefined && holdingOf(s, d)?.place === 'hot');
const withEgg = (d: DishPlan): boolean => ingredientIds(d).some((i) => ingredient(i)?.allergens.includes('eggs') === true);
/** Egg dishes that are not eaten at once reach this, 155 °F (rule ED-01, FDA Food Code 3-401.11). */
const eggHoldC = 68;
const holdC = safetyRule('ED-02').limit ?? 0;

function cookedTo(celsius: number, limit: number, dishes: readonly DishPlan[], id: 'safety.say.ED-01' | 'safety.say.ED-02'): Hit | null {
  return celsius >= limit ? null : { value: celsius, unit: 'degC', limit: { value: limit, unit: 'degC' }, about: dishes.map((d) => d.id), message: { id, params: { dishes: dishes.map((d) => d.name), celsius, limit } } };
}
/** ED-01: an egg dish that is to wait hot is cooked to 68 °C. */
export const eggsCooked: Rule = factRule({
  id: 'ED-01', level: 'stop', title: { id: 'safety.title.ED-01' }, fact: 'cookedC', applies: (s) => heldHot(s).some(withEgg),
  judge: (celsius, s) => cookedTo(celsius, eggHoldC, heldHot(s).filter(withEgg), 'safety.say.ED-01'),
});
/** ED-02: vegetables, grain, beans and lentils that are to wait hot are as hot as they are to wait when they leave the heat. */
export const cookedForHolding: Rule = factRule({
  id: 'ED-02', level: 'stop', title: { id: 'safety.title.ED-02' }, fact: 'cookedC', applies: (s) => heldHot(s).some((d) => !withEgg(d)),
  judge: (celsius, s) => cookedTo(celsius, holdC, heldHot(s).filter((d) => !withEgg(d)), 'safety.say.ED-02'),
});
