import type { Profile } from './profile';

/** One demand at an offset from a start: so much of something from `from` until `to` minutes after it. */
export interface Claim {
  readonly profile: Profile;
  readonly amount: number;
  readonly from: number;
  readonly to: number;
}

const wholeDown = (x: number): number => Math.floor(x + 1e-9);
const wholeUp = (x: number): number => Math.ceil(x - 1e-9);

/**
 * Latest start between `low` and `high` at which no claim conflicts; whole minutes unless `high` itself fits. null when there is none.
 * Each conflict pushes the start before the stretch that blocks it.
 */
export function latestStart(claims: readonly Claim[], low: number, high: number): number | null {
  let start = high;
  while (start >= low - 1e-9) {
    let push = start;
    let clashes = false;
    for (const c of claims) {
      const clash = c.profile.clashIndex(start + c.from, start + c.to, c.amount);
      if (clash < 0) continue;
      clashes = true;
      push = Math.min(push, c.profile.stretchFrom(clash) - c.to);
    }
    if (!clashes) return start;
    if (push === Number.NEGATIVE_INFINITY) return null;
    start = Math.min(wholeDown(push), start - 1e-6);
  }
  return null;
}

/** Earliest start between `low` and `high` at which no claim conflicts, or null. */
export function earliestStart(claims: readonly Claim[], low: number, high: number): number | null {
  let start = low;
  while (start <= high + 1e-9) {
    let push = start;
    let clashes = false;
    for (const c of claims) {
      const clash = c.profile.clashIndex(start + c.from, start + c.to, c.amount);
      if (clash < 0) continue;
      clashes = true;
      push = Math.max(push, c.profile.stretchTo(clash) - c.from);
    }
    if (!clashes) return start;
    if (push === Number.POSITIVE_INFINITY) return null;
    start = Math.max(wholeUp(push), start + 1e-6);
  }
  return null;
}
