import { safetyRule } from '../../reference';
import type { DishPlan } from '../../menu';
import { holdingOf, type Hit, type Rule, type Subject, type Verdict } from '../rule';

/** Fried pieces live by the clock of their batch (TC-06) and drinks by their flask (ED-03), not by a holding temperature. */
const held = (s: Subject, place: 'hot' | 'cold'): readonly DishPlan[] =>
  s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.recipe.frying === undefined && d.recipe.brewing === undefined && holdingOf(s, d)?.place === place);

type Said = 'safety.say.HH-01' | 'safety.say.HH-02' | 'safety.say.CH-01' | 'safety.say.CH-02';

function judgeHolding(s: Subject, place: 'hot' | 'cold', id: Said, outside: (celsius: number) => boolean): Verdict {
  const fallback = place === 'hot' ? s.event.kitchen.hotHoldC : s.event.kitchen.fridgeC;
  const hits: Hit[] = [];
  const unknown: string[] = [];
  for (const dish of held(s, place)) {
    const celsius = holdingOf(s, dish)?.temperatureC ?? fallback;
    if (celsius === null) unknown.push(dish.name);
    else if (outside(celsius)) {
      hits.push({ value: celsius, unit: 'degC', about: [dish.id], message: { id, params: { dish: dish.name, celsius } } });
    }
  }
  if (unknown.length === 0) return { hits };
  const dishes = { dishes: unknown.length, first: unknown[0] ?? '' };
  return { hits, needs: place === 'hot' ? { id: 'safety.needs.hotHold', params: dishes } : { id: 'safety.needs.fridge', params: dishes } };
}

const hotLimit = safetyRule('HH-01').limit ?? 57;
const coldLimit = safetyRule('CH-01').limit ?? 5;
const hotTarget = safetyRule('HH-02').limit ?? 60;
const coldTarget = safetyRule('CH-02').limit ?? 4.4;

/** HH-01: cooked food waits at 57 °C or hotter. */
export const hotHolding: Rule = {
  id: 'HH-01', level: 'stop', title: { id: 'safety.title.HH-01' },
  judge: (s) => judgeHolding(s, 'hot', 'safety.say.HH-01', (c) => c < hotLimit),
};
/** CH-01: cold food waits at 5 °C or colder. */
export const coldHolding: Rule = {
  id: 'CH-01', level: 'stop', title: { id: 'safety.title.CH-01' },
  judge: (s) => judgeHolding(s, 'cold', 'safety.say.CH-01', (c) => c > coldLimit),
};
/** HH-02: between 57 and 60 °C there is no margin. */
export const hotMargin: Rule = {
  id: 'HH-02', level: 'warn', title: { id: 'safety.title.HH-02' },
  judge: (s) => judgeHolding(s, 'hot', 'safety.say.HH-02', (c) => c >= hotLimit && c < hotTarget),
};
/** CH-02: between 4.4 and 5 °C the fridge is at its edge. */
export const coldMargin: Rule = {
  id: 'CH-02', level: 'caution', title: { id: 'safety.title.CH-02' },
  judge: (s) => judgeHolding(s, 'cold', 'safety.say.CH-02', (c) => c > coldTarget && c <= coldLimit),
};
