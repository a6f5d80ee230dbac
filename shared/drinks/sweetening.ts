import type { Recipe } from '../event';
import { isMadeAhead } from './made-ahead';

/** Foods that sweeten a drink and can stand beside it. */
const sweet: ReadonlySet<string> = new Set(['sugar', 'sugar-brown', 'sugar-icing', 'jaggery', 'honey', 'syrup']);

/** Lines of a drink's recipe that sweeten it, by ingredient. */
export const sweetLines = (recipe: Recipe): string[] => [...new Set(recipe.ingredients.map((l) => l.ingredient).filter((id) => sweet.has(id)))];

/** Ingredients that stand beside the drink instead of going into the pot: its sugar, where the recipe says so. What its own steps make ahead has the sugar in it. */
export const apartOf = (recipe: Recipe): string[] => (recipe.brewing?.sugar === 'apart' && !isMadeAhead(recipe) ? sweetLines(recipe) : []);
