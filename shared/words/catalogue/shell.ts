import type { Entry } from '../formats';

/** Words of the subject `shell`. */
export const shellWords = {
} as const satisfies Record<string, Entry>;
