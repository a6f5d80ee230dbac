/** One rule of order: `to` starts at least `least` minutes after `from` starts. A negative `least` is a maximal lag: `from` starts at most `-least` minutes after `to`. */
export interface Lag {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/**
 * Activities on renewable things. Activities and things are numbered from 0; times are whole minutes from 0 on.
 * Source of the model: resource-constrained project scheduling with generalised precedence (RCPSP and RCPSP/max), Bartusch, Möhring and
 * Radermacher 1988 (from memory).
 */
export interface ScheduleProblem {
  /** Minutes of each activity, whole, 0 or more. */
  readonly durations: readonly number[];
  /** What each activity takes of each thing while it runs, whole, 0 or more. */
  readonly demands: readonly (readonly number[])[];
  /** How many there are of each thing, whole. */
  readonly capacities: readonly number[];
  readonly lags: readonly Lag[];
  /** Earliest start of each activity; 0 for all when left out. */
  readonly earliest?: readonly number[];
  /** Latest end of each activity; no limit when left out. */
  readonly latest?: readonly number[];
}

/** Start of each activity. Unit: minutes. */
export type Starts = Int32Array;

/** What a search gives back. */
export interface Found {
  readonly starts: Starts;
  /** End of the last activity. Unit: minutes. */
  readonly makespan: number;
  /** Schedules generated: each forward or backward pass counts one, as in the published comparisons. */
  readonly schedules: number;
}

/** Start and end minutes that rules of order and windows alone leave each activity. */
export interface Windows {
  readonly kind: 'windows';
  readonly earliestStart: Int32Array;
  readonly latestStart: Int32Array;
}

/** Rules that contradict each other whatever there is to work with: activities of a circle that asks for more time than it grants. */
export interface Contradiction {
  readonly kind: 'contradiction';
  /** In order round the circle; one that also touches a window of its own names those activities. */
  readonly activities: readonly number[];
  /** Minutes missing. */
  readonly shortBy: number;
}
