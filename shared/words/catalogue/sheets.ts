import type { Entry } from '../formats';

/** Words of the subject `sheets`. */
export const sheetsWords = {
} as const satisfies Record<string, Entry>;
