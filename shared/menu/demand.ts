import { minutes, type Series } from '../measure';
import type { Grid, Shape } from './shapes';

/** A wave's portions of a dish (a real number) and how they come over time. */
export interface Stream {
  readonly portions: number;
  readonly shape: Shape;
}

/** Whole portions of a real total: up, but a remainder below one in a thousand million is floating-point dust. */
export const wholePortions = (total: number): number => Math.max(0, Math.ceil(total - 1e-9));

/**
 * Whole portions wanted in each minute. The real demand of all waves is added up over time, stretched to the whole total, and rounded
 * as a running sum: no minute is off by more than half a portion, and the minutes add up to the total exactly.
 */
export function wholeDemand(grid: Grid, streams: readonly Stream[], total: number): Series {
  const running = new Float64Array(grid.minutes);
  // Portions of waves that have eaten all from a minute on.
  const finished = new Float64Array(grid.minutes + 1);
  let real = 0;
  for (const { portions, shape } of streams) {
    if (portions <= 0) continue;
    real += portions;
    for (let i = shape.start; i < shape.end; i += 1) running[i] = (running[i] ?? 0) + portions * (shape.share[i] ?? 0);
    finished[shape.end] = (finished[shape.end] ?? 0) + portions;
  }
  const stretch = real > 0 ? total / real : 0;
  const values: number[] = [];
  let given = 0;
  let done = 0;
  for (let i = 0; i < grid.minutes; i += 1) {
    done += finished[i] ?? 0;
    const due = i === grid.minutes - 1 ? total : Math.min(total, Math.round(((running[i] ?? 0) + done) * stretch));
    values.push(Math.max(0, due - given));
    given = Math.max(given, due);
  }
  return { fromMinute: minutes(grid.from), values };
}

/** Everything in one minute. */
export const atOneMinute = (at: number, portions: number): Series => ({ fromMinute: minutes(Math.floor(at)), values: [portions] });

/** First and last minute with a portion; null when there is none. */
export function servedSpan(demand: Series): { readonly first: number | null; readonly last: number | null } {
  const first = demand.values.findIndex((v) => v > 0);
  const last = demand.values.findLastIndex((v) => v > 0);
  return first < 0 ? { first: null, last: null } : { first: demand.fromMinute + first, last: demand.fromMinute + last };
}
