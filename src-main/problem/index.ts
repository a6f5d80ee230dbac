export * from './host-problem';
export * from './disk-problem';
export { plainFormats } from './plain-formats';
