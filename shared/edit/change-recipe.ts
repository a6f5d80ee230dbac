import type { Recipe, Event } from '../event';
import { changeItem } from './items';
import { recipes } from './lists';
import type { EditResult, Patch } from './types';

/** Changes fields of a recipe; a field patched to `undefined` goes back to its default or out. */
export const changeRecipe = (event: Event, id: string, patch: Patch<Recipe>): EditResult => changeItem(event, recipes, id, patch);
