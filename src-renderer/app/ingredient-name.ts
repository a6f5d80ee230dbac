import { foodCalled, readableId, type IngredientLine, type Recipe } from '../../shared/event';
import { ingredient } from '../../shared/reference';

/** The name of an ingredient; an unknown id comes back readable. */
export const ingredientName = (id: string): string => ingredient(id)?.name ?? readableId(id);

/** The name of an ingredient of a recipe: the table's, else as the cook typed it there. */
export const nameIn = (recipe: Recipe, id: string): string => ingredient(id)?.name ?? foodCalled(id, [recipe]);

/** The name of the ingredient of a line: the table's, else as the cook typed it. */
export const lineName = ({ ingredient: id, called }: IngredientLine): string => ingredient(id)?.name ?? called ?? readableId(id);
