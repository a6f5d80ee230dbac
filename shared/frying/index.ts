/** Public file of the room `frying`: what goes in the pan at once, batches, bowls and oil. */
export { boilOffFactor, crustHeat, heatOfBatter, waterLostAt, waterLostTold, type OfRecipe } from './batter-heat';
export * from './types';
export * from './exact';
export * from './rules';
export { loadInputs, type LoadInputs } from './load-inputs';
export { planFrying } from './plan';
export { fryingNeeds, fryingOilOrigin } from './needs';
export { fryOffers, offerSaves, type FryOffer } from './offers';
export { reserveBowls, type ReserveBowls } from './reserve-bowls';
