import type { Entry } from '../formats';

/** Words of the subject `report`. */
export const reportWords = {
} as const satisfies Record<string, Entry>;
