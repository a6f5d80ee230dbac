/** Public file of the room `menu`. */
export * from './types';
