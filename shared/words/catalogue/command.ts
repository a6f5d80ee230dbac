import type { Entry } from '../formats';

/** Words of the subject `command`. */
export const commandWords = {
} as const satisfies Record<string, Entry>;
