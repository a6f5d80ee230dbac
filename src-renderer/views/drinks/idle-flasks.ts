import type { Event } from '../../../shared/event';
import type { Plan } from '../../../shared/plan';

/** Flasks and urns that hold nothing all day and are for no drink, while there is a drink on the menu that could go into one. */
export function idleFlasks(plan: Plan): Event['kitchen']['dispensers'] {
  if (!plan.menu.dishes.some((d) => d.recipe.brewing !== undefined)) return [];
  const used = new Set(plan.drinks.dispensers.filter((d) => d.litres.some((l) => l > 0)).map((d) => d.id));
  return plan.event.kitchen.dispensers.filter((d) => d.dish === undefined && !used.has(d.id));
}
