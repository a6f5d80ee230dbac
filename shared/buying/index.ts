/** Public file of the room `buying`. */
export * from './types';
export { needsOfMenu } from './needs';
export { planBuying } from './plan-buying';
