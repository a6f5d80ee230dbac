import { settle } from '../../household';
import { isRice, mayBeLeft, type DishPlan } from '../../menu';
import type { Plan } from '../../plan';
import { safetyRule } from '../../reference';

/** A dish that may be left over: a label is printed for it, the amount is written in by hand. */
export interface Leftover {
  readonly dish: DishPlan;
  /** Good in the fridge until then; minutes from the event's midnight. Whole days, but for rice. */
  readonly useBy: number;
  /** Centigrade to which it is heated through before it is eaten; null for what is eaten cold. */
  readonly reheatC: number | null;
}

/** Dishes that may be left over on a day with guests, and until when: three days in the fridge, rice one (rules LO-01, LO-03), heated to 74 °C (rule RH-01). */
export function leftovers(plan: Plan): readonly Leftover[] {
  if (plan.guests.adults.value + plan.guests.children.value === 0) return [];
  const days = settle(plan.event, 'prep.leftoverDays').value;
  const riceHours = settle(plan.event, 'prep.leftoverRiceHours').value;
  return plan.menu.dishes.filter(mayBeLeft).map((dish) => {
    const from = dish.lastServed ?? plan.event.closesAt;
    const ownLimit = dish.recipe.needsTemperatureControl ? Infinity : 7 * 1440;
    return { dish, useBy: isRice(dish) ? from + riceHours * 60 : from + Math.min(ownLimit, Math.floor(days) * 1440), reheatC: dish.recipe.serveHot ? safetyRule('RH-01').limit : null };
  });
}
