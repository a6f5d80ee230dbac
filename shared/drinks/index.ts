/** Public file of the room `drinks`. */
export * from './types';
export * from './rules';
