import type { Event } from '../event';
import type { Term } from '../figure';
import type { PlainWordId } from '../words';
import { useIds } from './types';

const useWords = new Map(useIds.map((id): [string, PlainWordId] => [id, `buying.use.${id}`]));

/** The word of a use that is no dish: guests, the meal; null for any other origin. */
export const useWord = (origin: string): PlainWordId | null => useWords.get(origin) ?? null;

/** What an origin is called in a working: the dish's name, or the word of a use (oil of the pans, guests). */
export function originNames(event: Event): (origin: string) => Term['label'] {
  const recipeNames = new Map(event.recipes.map((r) => [r.id, r.name]));
  const dishNames = new Map(event.menu.dishes.map((d) => [d.id, d.name ?? recipeNames.get(d.recipe) ?? d.id]));
  return (origin) => {
    const dish = dishNames.get(origin);
    const word = origin === 'frying-oil' ? 'buying.term.fryingOil' : useWord(origin);
    return dish === undefined && word !== null ? { word } : { text: dish ?? origin };
  };
}
