import type { Entry } from '../formats';

/** Words of the subject `menu`. */
export const menuWords = {
} as const satisfies Record<string, Entry>;
