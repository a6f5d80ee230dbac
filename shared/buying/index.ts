/** Public file of the room `buying`. */
export * from './types';
export { needsOfMenu } from './needs';
export { planBuying } from './plan-buying';
export { gasNeeds, thingNeeds, type ThingInputs } from './things';
export { ownKey } from './own-lines';
export { useWord } from './origin-names';
export { listFor, type WalkingList } from './list-for';
export * from './substitutes';
