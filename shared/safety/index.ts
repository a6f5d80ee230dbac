/** Public file of the room `safety`. */
export * from './types';
export type { SafetyInput } from './rule';
export { coolestOil, oilStopC, warmestOil } from './rules/oil-heat';
export { planSafety } from './plan-safety';
export { limitsOf, usGroups } from './profile';
