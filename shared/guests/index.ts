/** Public file of the room `guests`. */
export * from './types';
export { planGuests } from './plan-guests';
