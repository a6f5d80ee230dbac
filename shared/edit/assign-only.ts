import type { Dish, Event } from '../event';
import { dishes } from './lists';
import type { EditResult } from './types';

const recipeOf = (event: Event, dish: Dish) => event.recipes.find((r) => r.id === dish.recipe);

/** The only item of a list, or undefined. */
const only = <T>(list: readonly T[]): T | undefined => (list.length === 1 ? list[0] : undefined);

function friedAtStation(event: Event): { readonly event: Event; readonly to: string; readonly dish: Dish } | null {
  const station = only(event.kitchen.stations);
  const dish = only(event.menu.dishes.filter((d) => recipeOf(event, d)?.frying !== undefined));
  if (station === undefined || dish === undefined || station.dishes.length > 0) return null;
  return { event: { ...event, kitchen: { ...event.kitchen, stations: [{ ...station, dishes: [dish.id] }] } }, to: station.name, dish };
}

function drinkInFlask(event: Event): { readonly event: Event; readonly to: string; readonly dish: Dish } | null {
  const flask = only(event.kitchen.dispensers);
  const dish = only(event.menu.dishes.filter((d) => recipeOf(event, d)?.brewing?.hot === true));
  if (flask === undefined || dish === undefined || flask.dish !== undefined) return null;
  return { event: { ...event, kitchen: { ...event.kitchen, dispensers: [{ ...flask, dish: dish.id }] } }, to: flask.name, dish };
}

/**
 * Where there is one fried dish and one fry station with nothing to fry, or one hot drink and one flask for nothing yet, they belong together:
 * the edit that adds the second of them says so too, and its step names it.
 */
export function assignOnly(result: EditResult): EditResult {
  if ('problem' in result) return result;
  return [friedAtStation, drinkInFlask].reduce((done, assign) => {
    const made = assign(done.event);
    return made === null ? done : { event: made.event, name: { id: 'edit.addFor' as const, params: { step: done.name, to: made.to, dish: dishes.nameOf(made.dish, made.event) } } };
  }, result);
}
