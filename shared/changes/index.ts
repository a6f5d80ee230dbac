/** Public file of the room: what changed between two plans; fingerprints of what is printed. */
export { fingerprint } from './fingerprint';
