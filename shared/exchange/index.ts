/** Public file of the room: the plan in open formats (JSON, text, comma-separated values); recipes of other places read, scaled and written. */
export { planJson, type PlanJson } from './plan-json';
export type { DayJson } from './day-json';
export type { DrinksJson } from './drinks-json';
export type { FryingJson } from './frying-json';
export { planText } from './plan-text';
export { shoppingCsv } from './shopping-csv';
export { csv } from './csv';
export { readRecipes } from './recipe-read';
export type { ImportedRecipe, ImportedStep, ImportedYield, ImportProblem } from './recipe-types';
export { readIngredientLine } from './line/read';
export type { LineAmount, Measured, ReadLine } from './line/types';
export { scaleImported, type ScaledLine, type ScaledRecipe } from './recipe-scale';
export { scaleOwn, yieldOfOwn } from './recipe-own';
export { factorFor, type FoundFactor, type WantedSize } from './recipe-factor';
export { lineText, type FormatsOf } from './recipe-line-text';
