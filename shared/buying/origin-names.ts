import type { Event } from '../event';
import type { Term } from '../figure';
import { useIds } from './types';

/** What an origin is called in a working: the dish's name, or the word of a use (oil of the pans, reserve, guests). */
export function originNames(event: Event): (origin: string) => Term['label'] {
  const recipeNames = new Map(event.recipes.map((r) => [r.id, r.name]));
  const dishNames = new Map(event.menu.dishes.map((d) => [d.id, d.name ?? recipeNames.get(d.recipe) ?? d.id]));
  const words = new Map<string, string>([['frying-oil', 'buying.term.fryingOil'], ['reserve', 'buying.use.reserve'], ...useIds.map((id): [string, string] => [id, `buying.use.${id}`])]);
  return (origin) => {
    const dish = dishNames.get(origin);
    const word = words.get(origin);
    return dish === undefined && word !== undefined ? { word } : { text: dish ?? origin };
  };
}
