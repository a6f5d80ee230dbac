/** Public file of the room `kitchen`. */
export * from './types';
