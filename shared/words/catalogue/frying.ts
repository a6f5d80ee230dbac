import type { Entry } from '../formats';

/** Words of the subject `frying`. */
export const fryingWords = {
} as const satisfies Record<string, Entry>;
