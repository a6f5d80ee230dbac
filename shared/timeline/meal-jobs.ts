import type { Event } from '../event';
import type { MenuPlan } from '../menu';
import type { DayValues } from './day-values';
import type { Job } from './job';

/** How long before its time a meal may be put out at most, besides the putting out itself. Unit: minutes. Common practice, no source. */
const early = 10;

/**
 * Putting a meal on the table before its time: one job for all dishes that are served from the same minute on. Fried dishes come from the
 * pan and drinks from their flasks; what is there throughout is set up with the tables.
 */
export function mealJobs(takes: DayValues, event: Event, menu: MenuPlan): Job[] {
  const meals = new Map<number, { readonly ids: string[]; readonly names: string[] }>();
  for (const { id, served } of event.menu.dishes) {
    const dish = menu.dishes.find((d) => d.id === id);
    if (served.kind !== 'between' || dish === undefined || dish.firstServed === null || dish.recipe.frying !== undefined || dish.recipe.brewing !== undefined) continue;
    const meal = meals.get(served.from) ?? { ids: [], names: [] };
    meal.ids.push(id);
    meal.names.push(dish.name);
    meals.set(served.from, meal);
  }
  return [...meals].toSorted(([a], [b]) => a - b).map(([from, { ids, names }]) => {
    const id = `serve/meal/${ids[0] ?? ''}`;
    const stretches = [{ id, minutes: takes.putOut, attention: 1, needs: [], name: { id: 'timeline.task.putOut', params: { dishes: names } } as const }];
    return { id, kind: 'serve', roles: ['runner', 'cook'], about: {}, after: [], towards: 'late', spare: 0, anyTime: false, stretches, earliest: from - takes.putOut - early, latest: from, notDoneBefore: from - early };
  });
}
