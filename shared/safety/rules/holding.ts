import { isRice, type DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { limitsOf, type ProfileLimits } from '../profile';
import { holdingOf, type Hit, type Rule, type Subject, type Verdict } from '../rule';
import { minutesOut } from './standing';

type Place = 'hot' | 'cold';
type Said = 'safety.say.HH-01' | 'safety.say.HH-02' | 'safety.say.HH-03' | 'safety.say.CH-01' | 'safety.say.CH-02' | 'safety.say.CH-03' | 'safety.say.PR-07';

/** Fried pieces live by the clock of their batch (TC-06) and drinks by their flask (ED-03), not by a holding temperature. */
const held = (s: Subject, place: Place): readonly DishPlan[] =>
  s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.recipe.frying === undefined && d.recipe.brewing === undefined && holdingOf(s, d)?.place === place);

interface Question {
  readonly place: Place;
  readonly say: Said;
  readonly limit: (l: ProfileLimits) => number;
  /** What the sentence asks for; the limit itself when left out. */
  readonly aim?: (l: ProfileLimits) => number;
  /** True when the rule objects to this temperature. */
  readonly outside: (celsius: number, l: ProfileLimits) => boolean;
  readonly judges?: (s: Subject, dish: DishPlan) => boolean;
}

function judgeHolding(s: Subject, { place, say, limit, aim = limit, outside, judges = () => true }: Question): Verdict {
  const fallback = place === 'hot' ? s.event.kitchen.hotHoldC : s.event.kitchen.fridgeC;
  const limits = limitsOf(s.event);
  const hits: Hit[] = [];
  const unknown: string[] = [];
  for (const dish of held(s, place).filter((d) => judges(s, d))) {
    const celsius = holdingOf(s, dish)?.temperatureC ?? fallback;
    if (celsius === null) unknown.push(dish.name);
    else if (outside(celsius, limits)) {
      const bound = limit(limits);
      hits.push({ value: celsius, unit: 'degC', limit: { value: bound, unit: 'degC' }, about: [dish.id], message: { id: say, params: { dish: dish.name, celsius, limit: aim(limits) } } });
    }
  }
  if (unknown.length === 0) return { hits };
  const dishes = { dishes: unknown.length, first: unknown[0] ?? '' };
  return { hits, needs: place === 'hot' ? { id: 'safety.needs.hotHold', params: dishes } : { id: 'safety.needs.fridge', params: dishes } };
}

/** What a cook sets a warmer to under every set of rules. */
const aimC = safetyRule('HH-02').limit ?? 0;
/** HH-01: cooked food waits at 57 °C or hotter. */
export const hotHolding: Rule = {
  id: 'HH-01', level: 'stop', title: { id: 'safety.title.HH-01' },
  judge: (s) => judgeHolding(s, { place: 'hot', say: 'safety.say.HH-01', limit: (l) => l.hotStop, aim: (l) => Math.max(l.hotTarget, aimC), outside: (c, l) => c < l.hotStop }),
};
/** HH-02: above 57 °C but under the aim of the set of rules there is no margin. */
export const hotMargin: Rule = {
  id: 'HH-02', level: 'warn', title: { id: 'safety.title.HH-02' },
  judge: (s) => judgeHolding(s, { place: 'hot', say: 'safety.say.HH-02', limit: (l) => l.hotTarget, outside: (c, l) => c >= l.hotStop && c < l.hotTarget }),
};
/** CH-01: cold food waits at 5 °C or colder; 8 °C under the United Kingdom's rules. */
export const coldHolding: Rule = {
  id: 'CH-01', level: 'stop', title: { id: 'safety.title.CH-01' },
  judge: (s) => judgeHolding(s, { place: 'cold', say: 'safety.say.CH-01', limit: (l) => l.coldStop, outside: (c, l) => c > l.coldStop }),
};
/** CH-02: between the aim of the set of rules and its limit the fridge is at its edge. */
export const coldMargin: Rule = {
  id: 'CH-02', level: 'caution', title: { id: 'safety.title.CH-02' },
  judge: (s) => judgeHolding(s, { place: 'cold', say: 'safety.say.CH-02', limit: (l) => l.coldTarget, outside: (c, l) => c > l.coldTarget && c <= l.coldStop }),
};
/** PR-07: hot rice waits at 60 °C or hotter; 63 °C under the United Kingdom's rules. */
export const hotRice: Rule = {
  id: 'PR-07', level: 'stop', title: { id: 'safety.title.PR-07' },
  judge: (s) => judgeHolding(s, {
    place: 'hot', say: 'safety.say.PR-07', judges: (_, d) => isRice(d), limit: (l) => Math.max(l.hotTarget, aimC), outside: (c, l) => c < Math.max(l.hotTarget, aimC),
  }),
};
/** The one time food may be outside the limit under the United Kingdom's rules, in minutes; longer than that it is thrown away. */
const once = { hot: 120, cold: 240 };
const ukHot = safetyRule('HH-03').limit ?? 0;
const ukCold = safetyRule('CH-03').limit ?? 0;
const tooLong = (place: Place) => (s: Subject, dish: DishPlan): boolean => s.event.preferences.safetyProfile === 'uk' && (minutesOut(s, dish) ?? 0) >= once[place];
/** HH-03: under the United Kingdom's rules hot food is under 63 °C once and for less than two hours. */
export const hotUk: Rule = {
  id: 'HH-03', level: 'stop', title: { id: 'safety.title.HH-03' },
  judge: (s) => judgeHolding(s, { place: 'hot', say: 'safety.say.HH-03', limit: () => ukHot, outside: (c) => c < ukHot, judges: tooLong('hot') }),
};
/** CH-03: under the United Kingdom's rules cold food is above 8 °C once and for less than four hours. */
export const coldUk: Rule = {
  id: 'CH-03', level: 'stop', title: { id: 'safety.title.CH-03' },
  judge: (s) => judgeHolding(s, { place: 'cold', say: 'safety.say.CH-03', limit: () => ukCold, outside: (c) => c > ukCold, judges: tooLong('cold') }),
};
