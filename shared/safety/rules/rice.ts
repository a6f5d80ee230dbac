import { isRice } from '../../menu';
import { safetyRule } from '../../reference';
import { holdingOf, type Hit, type Rule } from '../rule';
import { hoursOut } from './standing';

const hours = safetyRule('PR-04').limit ?? 0;
/** Between these the spores of cooked rice grow and make a poison that heat does not destroy (rule PR-04). */
const growsFromC = 5;
const growsToC = 60;

/** PR-04: cooked rice spends no more than two hours between 5 and 60 °C. */
export const riceClock: Rule = {
  id: 'PR-04', level: 'stop', title: { id: 'safety.title.PR-04' },
  judge(s) {
    const hits: Hit[] = [];
    const unknown: string[] = [];
    for (const dish of s.menu.dishes.filter(isRice)) {
      const holding = holdingOf(s, dish);
      const place = holding?.place;
      const celsius = holding?.temperatureC ?? (place === 'hot' ? s.event.kitchen.hotHoldC : place === 'cold' ? s.event.kitchen.fridgeC : s.event.kitchen.roomC);
      const out = hoursOut(s, dish);
      if (place === undefined || celsius === null) unknown.push(dish.name);
      else if (celsius > growsFromC && celsius < growsToC && out !== null && out.value > hours) {
        hits.push({ value: out.value, unit: 'h', figure: out, about: [dish.id], message: { id: 'safety.say.PR-04', params: { dish: dish.name, hours: out.value, celsius } } });
      }
    }
    return unknown.length === 0 ? { hits } : { hits, needs: { id: 'safety.needs.waits', params: { dishes: unknown.length, first: unknown[0] ?? '' } } };
  },
};
