import type { Dish, Event, Recipe, RoleId } from '../event';
import { planGuests } from '../guests';
import { settle } from '../household';
import { keepingOf } from './keeping';
import { busiest } from './servings';
import { isMealRecipe } from './step-minutes';

/** Dishes that make a meal: they are eaten at a time, not as people come. */
const mealRoles: ReadonlySet<RoleId> = new Set(['grain', 'pulse', 'vegetable', 'salad', 'yoghurt', 'soup', 'plain']);

/**
 * When a dish that is put on the menu is served at first: a meal with the others of the menu, else the stretch in which most guests are there, never
 * longer than it keeps; as people come for what is no meal.
 */
export function firstServing(event: Event, recipe: Recipe): Dish['served'] {
  if (!mealRoles.has(recipe.role) || !isMealRecipe(recipe)) return { kind: 'throughout' };
  const keeping = keepingOf(event, { id: 'new', recipe: recipe.id, takeUp: 1, served: { kind: 'throughout' } }, recipe);
  const meal = settle(event, 'serve.meal').value;
  const longest = Math.max(15, Math.min(meal, ...(keeping.minutes === null ? [] : [keeping.minutes.value - keeping.latest - settle(event, 'serve.spare').value])));
  const meals = event.menu.dishes.flatMap((d) => (d.served.kind === 'between' && mealRoles.has(event.recipes.find((r) => r.id === d.recipe)?.role ?? 'sweet') ? [d.served] : []));
  const [first] = meals;
  if (first !== undefined && first.to > first.from) return { kind: 'between', from: first.from, to: Math.min(first.to, first.from + longest) };
  const { presence } = planGuests(event);
  const best = busiest({ fromMinute: presence.fromMinute, values: presence.planning.map((v, i) => (presence.fromMinute + i >= event.opensAt && presence.fromMinute + i < event.closesAt ? v : 0)) }, Math.floor(longest / 15) * 15);
  if (best === null) return { kind: 'throughout' };
  const start = Math.max(event.opensAt, Math.min(best.from, event.closesAt - longest));
  return { kind: 'between', from: start, to: Math.min(event.closesAt, start + Math.floor(longest / 15) * 15) };
}
