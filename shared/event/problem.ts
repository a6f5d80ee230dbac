import type { Message } from '../words';

/** One thing in an event that does not fit. */
export interface EventProblem {
  /** Way to the field, e.g. `guests.waves[1].from`; empty for the file as a whole. */
  readonly path: string;
  /** What is wrong, where in the cook's words, and how to mend it. */
  readonly message: Message;
}

/** Keys and places from the event down to a value. */
export type FieldPath = readonly (string | number)[];

/** Writes a path as it is shown to programs: `guests.waves[1].from`. */
export const pathText = (path: FieldPath): string =>
  path.reduce<string>((text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`), '');
