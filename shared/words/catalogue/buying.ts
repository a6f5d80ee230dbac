import type { Entry } from '../formats';

/** Words of the subject `buying`. */
export const buyingWords = {
} as const satisfies Record<string, Entry>;
