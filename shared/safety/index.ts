/** Public file of the room `safety`. */
export * from './types';
