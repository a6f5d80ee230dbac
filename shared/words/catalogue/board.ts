import type { Entry } from '../formats';

/** Words of the subject `board`. */
export const boardWords = {
} as const satisfies Record<string, Entry>;
