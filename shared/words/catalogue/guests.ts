import type { Entry } from '../formats';

/** Words of the subject `guests`. */
export const guestsWords = {
} as const satisfies Record<string, Entry>;
