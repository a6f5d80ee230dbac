/** Public file of the room: units, exact amounts, clock times, branded numbers. */
export * from './brands';
export * from './units';
export * from './amount';
export * from './clock';
export * from './series';
export * from './density';
export * from './kitchen';
export * from './full-measure';
export * from './on-hand';
export * from './spoon-and-cup';
export * from './parse';
export * from './money';
export * from './extremes';
export * from './proportion';
export * from './profile';
export * from './free-start';
