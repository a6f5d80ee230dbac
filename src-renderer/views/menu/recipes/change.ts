import type { Patch } from '../../../../shared/edit';
import type { Recipe } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';

/** Changes fields of the recipe; answers what is wrong with them, or null when the change was taken. */
export type ChangeRecipe = (patch: Patch<Recipe>) => Message | null;

/** What the parts of the recipe page get. */
export interface PartProps {
  readonly recipe: Recipe;
  readonly change: ChangeRecipe;
}
