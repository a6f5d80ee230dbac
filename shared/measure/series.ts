import type { Minutes } from './brands';

/** One value per minute: `values[i]` belongs to the minute starting at `fromMinute + i`. Outside it the value is 0. */
export interface Series {
  readonly fromMinute: Minutes;
  readonly values: readonly number[];
}
