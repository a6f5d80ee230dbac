import type { Hit, Rule } from '../rule';
import { factRule } from './facts';

/** Minutes that food from the microwave stands covered before it is measured (rule RH-02, FDA Food Code 3-403.11(B)). */
const standMinutes = 2;
const reheats = (t: { readonly does: string }): boolean => t.does === 'reheat';

/** RH-02: food from the microwave is stirred, covered, and stands two minutes. Judged by the shortest time a reheating step leaves it to itself. */
export const microwaveStand: Rule = factRule({
  id: 'RH-02', level: 'caution', title: { id: 'safety.title.RH-02' }, fact: 'reheatIn', applies: (s) => s.menu.dishes.some((d) => d.recipe.steps.some(reheats)),
  judge(way, s): Hit | null {
    if (way !== 'microwave') return null;
    const short = s.menu.dishes.flatMap((d) => d.recipe.steps.filter((t) => reheats(t) && t.passive.fixed < standMinutes).map((t) => ({ d, minutes: t.passive.fixed })));
    const [first] = short.toSorted((a, b) => a.minutes - b.minutes);
    if (first === undefined) return null;
    const dishes = s.menu.dishes.filter((d) => short.some((x) => x.d.id === d.id));
    return { value: first.minutes, unit: 'min', limit: { value: standMinutes, unit: 'min' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.RH-02', params: { dishes: dishes.map((d) => d.name), minutes: first.minutes, limit: standMinutes } } };
  },
});
