/** Public file of the room `buying`. */
export * from './types';
