import type { Entry } from '../formats';

/** Words of the subject `drinks`. */
export const drinksWords = {
} as const satisfies Record<string, Entry>;
