import type { Minutes } from './brands';

/** One value per minute: `values[i]` belongs to the minute starting at `fromMinute + i`. Outside it the value is 0. */
export interface Series {
  readonly fromMinute: Minutes;
  readonly values: readonly number[];
}

/** Value of a series in the minute that starts at `at` (whole minutes); 0 outside. */
export const seriesAt = (s: Series, at: number): number => s.values[Math.floor(at) - s.fromMinute] ?? 0;

/** Sum of a series over all its minutes. */
export const seriesTotal = (s: Series): number => s.values.reduce((a, b) => a + b, 0);
