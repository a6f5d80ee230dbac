/** Public file of the room: every sentence and label, and how to say them. */
export * from './formats';
export * from './say';
export { catalogue } from './catalogue';
