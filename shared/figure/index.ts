/** Public file of the room: figures, their workings, the arithmetic tree. */
export * from './sum';
export * from './figure';
export * from './rules';
