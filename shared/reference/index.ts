/** Public file of the room: tables of facts, each row with its source. */
export * from './parameters';
export * from './ingredients';
export * from './things';
export * from './substitutions';
export * from './sources';
export * from './appetite';
export * from './roles';
export * from './circle-packing';
export * from './safety-rules';
export * from './frying-oils';
export * from './legal-range';
