import * as z from 'zod';
import { recipeSchema, written } from '../event';

/** Format name in every shelf file; the number rises only when an older program could not read the file rightly. */
export const shelfFormat = 'brimful-shelf/1';

/** Most recipes on one shelf. */
export const mostRecipes = 2000;

/** A shelf file: the household's recipes, kept across events and handed on as one file. Unknown fields are kept; defaults are filled in. */
export const shelfSchema = z.looseObject({
  format: z.literal(shelfFormat),
  recipes: z.array(recipeSchema).max(mostRecipes).default([]),
});
/** The household's recipes: a value. */
export type Shelf = z.infer<typeof shelfSchema>;

/** A shelf with nothing on it. */
export const emptyShelf: Shelf = { format: shelfFormat, recipes: [] };

/** Writes a shelf file: readable JSON, fields in a fixed order. The same shelf gives the same bytes; `parseShelf` of the result gives an equal shelf. */
export const serialiseShelf = (shelf: Shelf): string => written(shelf);
