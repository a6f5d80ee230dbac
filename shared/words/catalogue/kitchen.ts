import type { Entry } from '../formats';

/** Words of the subject `kitchen`. */
export const kitchenWords = {
} as const satisfies Record<string, Entry>;
