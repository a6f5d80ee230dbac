export * from './host-problem';
export * from './disk-problem';
