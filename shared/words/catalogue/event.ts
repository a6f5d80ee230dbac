import type { Entry } from '../formats';

/** Words of the subject `event`. */
export const eventWords = {
} as const satisfies Record<string, Entry>;
