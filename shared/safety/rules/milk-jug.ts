import type { DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { holdingOf, type Hit, type Rule } from '../rule';
import { hoursBetween } from './hours';

/** Milk or cream set out by itself, for tea and coffee. */
export const isMilkJug = (d: DishPlan): boolean => d.role === 'condiment' && d.recipe.ingredients.length === 1 && d.recipe.ingredients.every((l) => /(^|-)(milk|cream)(-|$)/.test(l.ingredient) && !l.ingredient.startsWith('coconut'));
const jugHours = safetyRule('ED-05').limit ?? 0;
/** Above this a room is hot and two hours become one (rule TC-02). */
const hotRoomC = 32;

/** ED-05: a jug of milk is changed within two hours (one in a hot room) unless it stands cold. A jug whose temperature is known is CH-01's, one on the counter TC-01's. */
export const milkJug: Rule = {
  id: 'ED-05', level: 'warn', title: { id: 'safety.title.ED-05' },
  judge(s) {
    const jugs = s.menu.dishes.filter((d) => isMilkJug(d) && d.firstServed !== null);
    const unknown = jugs.filter((d) => holdingOf(s, d) === undefined);
    const limit = s.event.kitchen.roomC > hotRoomC ? jugHours / 2 : jugHours;
    const hits = jugs.flatMap((d): readonly Hit[] => {
      const holding = holdingOf(s, d);
      if (holding?.place !== 'cold' || holding.temperatureC !== undefined || d.firstServed === null || d.lastServed === null) return [];
      const hours = hoursBetween(d.firstServed, d.lastServed);
      return hours.value <= limit ? [] : [{ value: hours.value, unit: 'h', figure: hours, limit: { value: limit, unit: 'h' }, about: [d.id], message: { id: 'safety.say.ED-05', params: { dish: d.name, hours: hours.value, limit } } }];
    });
    return unknown.length === 0 ? { hits } : { hits, needs: { id: 'safety.needs.waits', params: { dishes: unknown.length, first: unknown[0]?.name ?? '' } } };
  },
};
