import { safetyRule } from '../../reference';
import type { DishPlan } from '../../menu';
import { holdingOf, type Hit, type Rule, type Subject, type Verdict } from '../rule';

/** Fried pieces live by the clock of their batch (TC-06) and drinks by their flask (ED-03), not by a holding temperature. */
const held = (s: Subject, place: 'hot' | 'cold'): readonly DishPlan[] =>
  s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.recipe.frying === undefined && d.recipe.brewing === undefined && holdingOf(s, d)?.place === place);

function judgeHolding(s: Subject, place: 'hot' | 'cold', fallback: number | null, outside: (celsius: number) => boolean): Verdict {
  const hits: Hit[] = [];
  const unknown: string[] = [];
  for (const dish of held(s, place)) {
    const celsius = holdingOf(s, dish)?.temperatureC ?? fallback;
    if (celsius === null) unknown.push(dish.name);
    else if (outside(celsius)) {
      hits.push({
        value: celsius, unit: 'degC', about: [dish.id],
        message: place === 'hot' ? { id: 'safety.say.HH-01', params: { dish: dish.name, celsius } } : { id: 'safety.say.CH-01', params: { dish: dish.name, celsius } },
      });
    }
  }
  if (unknown.length === 0) return { hits };
  const dishes = { dishes: unknown.length, first: unknown[0] ?? '' };
  return { hits, needs: place === 'hot' ? { id: 'safety.needs.hotHold', params: dishes } : { id: 'safety.needs.fridge', params: dishes } };
}

const hotLimit = safetyRule('HH-01').limit ?? 57;
const coldLimit = safetyRule('CH-01').limit ?? 5;

/** HH-01: cooked food waits at 57 °C or hotter. */
export const hotHolding: Rule = {
  id: 'HH-01', level: 'stop', title: { id: 'safety.title.HH-01' },
  judge: (s) => judgeHolding(s, 'hot', s.event.kitchen.hotHoldC, (c) => c < hotLimit),
};
/** CH-01: cold food waits at 5 °C or colder. */
export const coldHolding: Rule = {
  id: 'CH-01', level: 'stop', title: { id: 'safety.title.CH-01' },
  judge: (s) => judgeHolding(s, 'cold', s.event.kitchen.fridgeC, (c) => c > coldLimit),
};
