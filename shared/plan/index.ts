/** Public file of the room: the plan of an event. */
export * from './types';
export * from './plan';
export * from './day-remedies';
