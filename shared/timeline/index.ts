/** Public file of the room `timeline`. */
export * from './types';
export { planDay, type DayInputs } from './plan-day';
export * from './schedule';
