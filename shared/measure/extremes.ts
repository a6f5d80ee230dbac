/** Smallest of a list of any length, and of `start`; `start` when the list is empty. (Spreading a long list into Math.min overflows the stack.) */
export const lowest = (values: readonly number[], start: number = Number.POSITIVE_INFINITY): number => values.reduce((least, v) => (v < least ? v : least), start);

/** Largest of a list of any length, and of `start`; `start` when the list is empty. */
export const highest = (values: readonly number[], start: number = Number.NEGATIVE_INFINITY): number => values.reduce((most, v) => (v > most ? v : most), start);
