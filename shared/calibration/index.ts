/** Public file of the room `calibration`: what one batch really fried tells of pieces, frying and burner. */
export * from './types';
export { calibrate } from './calibrate';
