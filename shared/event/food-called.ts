import type { Event } from './schema/event';

/** The words of an id that nothing better is known for: dashes as spaces. */
export const readableId = (id: string): string => id.replaceAll(/[-_]/g, ' ');

/**
 * What a food is called that no table has: as the cook typed it in one of the recipes, else its id made readable.
 * @param id of the food. @param recipes those of the event.
 */
export const foodCalled = (id: string, recipes: Event['recipes']): string => {
  for (const recipe of recipes) for (const line of recipe.ingredients) if (line.ingredient === id && line.called !== undefined) return line.called;
  return readableId(id);
};
