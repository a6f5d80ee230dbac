/** Public file of the room `guests`. */
export * from './types';
