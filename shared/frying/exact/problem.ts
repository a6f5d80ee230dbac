/**
 * One dish fried in equal pans, on whole minutes. Portions are ordered by the minute they are wanted (`wanted`); batch j serves a
 * consecutive run of them. A batch put in at s is lifted at s + `fry` and its pan is free again at s + `cycle`.
 */
export interface FryProblem {
  /** Minute each portion is wanted, ascending. */
  readonly wanted: readonly number[];
  /** Pieces in a pan at once, at least 1. */
  readonly load: number;
  /** Minutes from put-in to lift, at least 1. */
  readonly fry: number;
  /** Minutes from put-in until the pan is free, at least `fry`. */
  readonly cycle: number;
  /** Longest wait from lift to eating, minutes. */
  readonly hold: number;
  /** Least wait from lift to eating, minutes: lifted this early so that a hitch leaves no tray empty. Up to `hold`; below 0 guests may wait so long for theirs. */
  readonly lead: number;
  /** Earliest minute anything may be put in; -Infinity when there is no limit. */
  readonly earliest: number;
  /** Pans free at a minute; other dishes in the same pans lower it. */
  readonly free: (minute: number) => number;
  /** Most pans free at any minute. */
  readonly pans: number;
}

/** One batch of a solution: put-in minute and the run of portions [first, end) it serves. */
export interface FryBatch {
  readonly dropAt: number;
  readonly first: number;
  readonly end: number;
}

/** The minute each portion is wanted, from portions per minute. Fractions are not allowed. */
export function portionMinutes(perMinute: readonly number[], fromMinute: number): number[] {
  const wanted: number[] = [];
  perMinute.forEach((n, i) => {
    for (let k = 0; k < n; k += 1) wanted.push(fromMinute + i);
  });
  return wanted;
}

/** Portions wanted up to and including a minute: the first index whose minute is later. Binary search over ascending minutes. */
export function countUpTo(wanted: readonly number[], minute: number): number {
  let low = 0;
  let high = wanted.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if ((wanted[mid] ?? Infinity) <= minute) low = mid + 1;
    else high = mid;
  }
  return low;
}
