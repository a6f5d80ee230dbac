import type { Dish, Dispenser, Event, Station } from '../event';
import { freshId } from './fresh-id';
import { dishes } from './lists';
import type { EditResult } from './types';

/** What an addition brought along: the event after it, what serves, and the dishes it serves. */
interface Assigned {
  readonly event: Event;
  readonly to: string;
  readonly dishes: readonly Dish[];
}

const recipeOf = (event: Event, dish: Dish) => event.recipes.find((r) => r.id === dish.recipe);

/** The only item of a list, or undefined. */
const only = <T>(list: readonly T[]): T | undefined => (list.length === 1 ? list[0] : undefined);

const withStation = (event: Event, station: Station): Event => ({ ...event, kitchen: { ...event.kitchen, stations: event.kitchen.stations.map((s) => (s.id === station.id ? station : s)) } });

/** Fried dishes of no station go to the only one there is: all of them when it fries nothing yet, else only the dish added last. */
function friedAtStation(event: Event): Assigned | null {
  const station = only(event.kitchen.stations);
  if (station === undefined) return null;
  const fried = event.menu.dishes.filter((d) => recipeOf(event, d)?.frying !== undefined && !station.dishes.includes(d.id));
  const taken = station.dishes.length === 0 ? fried : fried.filter((d) => d === event.menu.dishes.at(-1));
  return taken.length === 0 ? null : { event: withStation(event, { ...station, dishes: [...station.dishes, ...taken.map((d) => d.id)] }), to: station.name, dishes: taken };
}

/** The first hot drink that stands nowhere goes into the first flask that is for nothing yet and is fit for it. */
function drinkInFlask(event: Event): Assigned | null {
  const { dispensers } = event.kitchen;
  const drink = event.menu.dishes.find((d) => recipeOf(event, d)?.brewing?.hot === true && !dispensers.some((f) => f.dish === d.id));
  if (drink === undefined) return null;
  const milk = (recipeOf(event, drink)?.brewing?.milkShare ?? 0) > 0;
  const flask = dispensers.find((f: Dispenser) => f.dish === undefined && f.insulation !== 'none' && (f.fitForMilk || !milk));
  if (flask === undefined) return null;
  return { event: { ...event, kitchen: { ...event.kitchen, dispensers: dispensers.map((f) => (f === flask ? { ...f, dish: drink.id } : f)) } }, to: flask.name, dishes: [drink] };
}

/**
 * What is added takes its plain place: fried dishes go to the only fry station, a hot drink into a flask that is for nothing yet, and the
 * other way round. The step names it, and one undo takes both back.
 */
export function assignOnly(result: EditResult): EditResult {
  if ('problem' in result) return result;
  return [friedAtStation, drinkInFlask].reduce((done, assign) => {
    const made = assign(done.event);
    return made === null ? done : { event: made.event, name: { id: 'edit.addFor' as const, params: { step: done.name, to: made.to, dishes: made.dishes.map((d) => dishes.nameOf(d, made.event)) } } };
  }, result);
}

/** The first pan brings its fry station along, named like it: without one nobody fries. */
export function stationOfFirst(result: EditResult): EditResult {
  if ('problem' in result) return result;
  const { kitchen } = result.event;
  const pan = only(kitchen.pans);
  if (pan === undefined || kitchen.stations.length > 0) return result;
  const stations = [{ id: freshId(kitchen.stations, 'station'), name: pan.name, pans: [pan.id], dishes: [] }];
  return { event: { ...result.event, kitchen: { ...kitchen, stations } }, name: { id: 'edit.withStation', params: { step: result.name, name: pan.name } } };
}
