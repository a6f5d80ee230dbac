import type { Entry } from '../formats';

/** Words of the subject `safety`. */
export const safetyWords = {
} as const satisfies Record<string, Entry>;
