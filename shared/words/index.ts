/** Public file of the room: every sentence and label, and how to say them. */
export * from './formats';
export * from './say';
export * from './make-formats';
export * from './calendar';
export { catalogue } from './catalogue';
