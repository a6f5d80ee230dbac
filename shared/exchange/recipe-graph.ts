import { deepestRecipe } from './recipe-find';

/** A JSON object. */
export type JsonGroup = Readonly<Record<string, unknown>>;

/** True for a JSON object, not a list. */
export const isGroup = (value: unknown): value is JsonGroup => typeof value === 'object' && value !== null && !Array.isArray(value);
/** A value as a list: one thing is a list of one, nothing an empty list. */
export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : value === undefined || value === null ? [] : [value]);
/** An own field of a group; undefined when it is not there. */
export const field = (group: JsonGroup, key: string): unknown => (Object.hasOwn(group, key) ? group[key] : undefined);

/** True when a group says it is of a type of schema.org: by name, by address, or in a list of types. */
export const isOfType = (group: JsonGroup, type: string): boolean =>
  listOf(field(group, '@type')).some((one) => typeof one === 'string' && one.replace(/^(?:https?:\/\/schema\.org\/|schema:)/, '').toLowerCase() === type.toLowerCase());

/** Most recipes taken from one text. */
export const mostRecipes = 500;
const hasContent = (recipe: JsonGroup): boolean => ['recipeIngredient', 'ingredients', 'recipeInstructions'].some((key) => listOf(field(recipe, key)).length > 0);

/**
 * Every Recipe in a JSON value, wherever it stands: alone, in a list, in `@graph`, as `mainEntity`. A recipe that only names another page is left
 * out when there are fuller ones; the same recipe given twice counts once.
 */
export function recipesInJson(values: readonly unknown[]): JsonGroup[] {
  const found = new Map<string, JsonGroup>();
  const visit = (value: unknown, depth: number): void => {
    if (depth > deepestRecipe || found.size > mostRecipes || typeof value !== 'object' || value === null) return;
    if (isGroup(value) && isOfType(value, 'Recipe')) found.set(JSON.stringify([field(value, 'name'), field(value, 'recipeIngredient') ?? field(value, 'ingredients'), field(value, 'recipeInstructions')]), value);
    for (const inner of Object.values(value)) visit(inner, depth + 1);
  };
  for (const value of values) visit(value, 0);
  const all = [...found.values()];
  const full = all.filter(hasContent);
  return full.length > 0 ? full : all;
}
