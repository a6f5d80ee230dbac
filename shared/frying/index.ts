/** Public file of the room `frying`. */
export * from './types';
export * from './exact';
