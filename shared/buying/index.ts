/** Public file of the room `buying`. */
export * from './types';
export { needsOfMenu } from './needs';
export { planBuying } from './plan-buying';
export { thingNeeds, type ThingInputs } from './things';
export { ownKey } from './own-lines';
