/** Public file of the room `safety`. */
export * from './types';
export type { SafetyInput } from './rule';
export { planSafety } from './plan-safety';
export { usGroups } from './profile';
