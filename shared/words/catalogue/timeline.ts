import type { Entry } from '../formats';

/** Words of the subject `timeline`. */
export const timelineWords = {
} as const satisfies Record<string, Entry>;
