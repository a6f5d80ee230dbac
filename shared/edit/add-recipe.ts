import type * as z from 'zod';
import type { Event, recipeSchema } from '../event';
import { addItem } from './items';
import { recipes } from './lists';
import type { EditResult } from './types';

/** Adds a recipe. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addRecipe = (event: Event, recipe: z.input<typeof recipeSchema>): EditResult => addItem(event, recipes, recipe);
