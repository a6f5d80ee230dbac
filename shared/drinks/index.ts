/** Public file of the room `drinks`. */
export * from './types';
export * from './rules';
export { planDrinks } from './plan';
export { drinksNeeds } from './needs';
export { isMadeAhead } from './made-ahead';
export { sweetLines } from './sweetening';
export { liftLitres } from './rounds';
