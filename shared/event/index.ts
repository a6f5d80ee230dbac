/** Public file of the room: the Event schema and its types; reading and writing event files. */
export * from './schema/parts';
export * from './schema/guests';
export * from './schema/recipe';
export * from './schema/kitchen';
export * from './schema/event';
export * from './formats';
