export { allCalls } from './all-calls';
export type { Answers } from './answers';
export { isHostMethod, makeHandle } from './handle';
export type { Handle } from './handle';
export type { Dialogs, Ending, Shell } from './shell';
export { today } from './today';
