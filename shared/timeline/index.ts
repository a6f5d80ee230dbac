/** Public file of the room `timeline`. */
export * from './types';
