import type { DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { holdingOf, type Hit, type Rule, type Subject } from '../rule';
import { factRule } from './facts';

const hours = safetyRule('TC-07').limit ?? 0;

/** Most portions wanted within any stretch of the limit: a platter that holds no more is empty in time. */
function inOneStretch(dish: DishPlan): number {
  const { values } = dish.demand;
  let [sum, most] = [0, 0];
  values.forEach((v, i) => {
    sum += v - (values[i - hours * 60] ?? 0);
    most = Math.max(most, sum);
  });
  return most;
}
/** Set out on the table for longer than a platter may stand. Fried pieces come in batches and drinks in flasks. */
const onTable = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.servedAs !== 'cup' && d.recipe.frying === undefined && holdingOf(s, d) !== undefined
  && d.firstServed !== null && d.lastServed !== null && d.lastServed - d.firstServed > hours * 60);

/** TC-07: people who come in waves get small platters, each changed whole and none filled up. The dish with the largest platter is named. */
export const smallPlatters: Rule = factRule({
  id: 'TC-07', level: 'caution', title: { id: 'safety.title.TC-07' }, fact: 'platesChanged', applies: (s) => onTable(s).length > 0,
  judge(changed, s): Hit | null {
    const [worst] = onTable(s).map((d) => ({ d, most: inOneStretch(d) })).filter((x) => x.d.portions.value > x.most).toSorted((a, b) => b.d.portions.value - b.most - (a.d.portions.value - a.most));
    if (changed || worst === undefined) return null;
    const { d, most } = worst;
    return { value: d.portions.value, unit: d.portions.unit, figure: d.portions, limit: { value: most, unit: d.portions.unit }, about: [d.id], message: { id: 'safety.say.TC-07', params: { dish: d.name, n: d.portions.value, most, hours } } };
  },
});
