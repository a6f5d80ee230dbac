/** Public file of the room `frying`: what goes in the pan at once, batches, bowls and oil. */
export * from './types';
export * from './exact';
export * from './rules';
export { planFrying } from './plan';
export { fryingNeeds, fryingOilOrigin } from './needs';
