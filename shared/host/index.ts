/** Public file of the room: the contract between a face and its host. */
export * from './contract';
export * from './methods';
