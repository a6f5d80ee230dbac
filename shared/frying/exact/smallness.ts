/** What a fresh plan may cost: see `freshPlan`. */
export interface Freshness {
  /** Batches more than the fewest; 0 keeps their number. */
  readonly more: number;
  /** Pieces below which a batch counts as small; 0 when no batch does. */
  readonly small: number;
  /** Portion-minutes of waiting that a batch of no pieces would count as for each piece of `small`; see `smallness`. */
  readonly dear: number;
  /** With several pans, partial plans kept for each number of portions served; more is slower and surer. */
  readonly width: number;
  /** With several pans, ways of one more batch looked at before only the cheapest partial plan is kept for each number of portions. */
  readonly effort: number;
}

/** What a small batch counts as, in portion-minutes: nothing from `small` pieces on, then rising with the square of what is missing. */
export const smallness = (f: Pick<Freshness, 'small' | 'dear'>, pieces: number): number =>
  (pieces >= f.small ? 0 : (f.dear * (f.small - pieces) ** 2) / f.small);
