import type { Entry } from '../formats';

/** Words of the subject `units`. */
export const unitsWords = {
} as const satisfies Record<string, Entry>;
