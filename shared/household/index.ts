/** Public file of the room: what is kept across events. Today: which value of a figure is in force. */
export * from './settle';
