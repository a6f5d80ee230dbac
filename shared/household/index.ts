/** Public file of the room: what is kept across events: which value of a figure is in force, and the shelf of recipes. */
export * from './settle';
export * from './table-value';
export * from './shelf';
export * from './parse-shelf';
export * from './merge-shelf';
export * from './doubles';
