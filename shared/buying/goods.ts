import { ingredient, thing, type Ingredient } from '../reference';

/** A row of the tables of food and of things; undefined for what neither knows. */
export const goods = (id: string): Ingredient | undefined => ingredient(id) ?? thing(id);

/** True for a thing: cups, gas. A food of the same id comes first. */
export const isThing = (id: string): boolean => ingredient(id) === undefined && thing(id) !== undefined;
