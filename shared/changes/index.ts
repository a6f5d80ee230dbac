/** Public file of the room: what changed between two plans; fingerprints of what is printed. */
export { changeKinds, type Change, type ChangeEffect, type ChangeKind } from './change';
export { changes, compareText, largestChanges } from './changes';
export { fingerprint } from './fingerprint';
