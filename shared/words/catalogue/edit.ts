import type { Entry } from '../formats';

/** Words of the subject `edit`. */
export const editWords = {
} as const satisfies Record<string, Entry>;
