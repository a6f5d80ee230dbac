/** Public file of the room: the plan in open formats (JSON, text, comma-separated values). */
export { planJson, type PlanJson } from './plan-json';
export type { DayJson } from './day-json';
export type { DrinksJson } from './drinks-json';
export type { FryingJson } from './frying-json';
export { planText } from './plan-text';
export { shoppingCsv } from './shopping-csv';
export { csv } from './csv';
