import type { Entry } from '../formats';

/** Words of the subject `host`. */
export const hostWords = {
} as const satisfies Record<string, Entry>;
