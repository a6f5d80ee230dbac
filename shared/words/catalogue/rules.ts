import type { Entry } from '../formats';

/** Words of the subject `rules`. */
export const rulesWords = {
} as const satisfies Record<string, Entry>;
