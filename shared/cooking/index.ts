/** Public file of the room `cooking`: how often a dish of the meal is cooked, in which pots, in which fresh bowls. */
export * from './types';
export { planCooking } from './plan';
export { stepMinutes, usesPot, isMealRecipe } from './step-minutes';
export { firstServing } from './meal-window';
