import type { Step } from '../../../../shared/event';

/** Longest before serving that a step may end, in minutes (limit of the event file: 30 days). */
export const longestAhead = 43200;

/** Minutes before serving within which a step ends; undefined: no such window. */
export type StepWindow = Step['endsBefore'];

/** The step with this window; without one the field goes. */
export function withWindow(step: Step, next: StepWindow): Step {
  const { endsBefore: _, ...rest } = step;
  return next === undefined ? rest : { ...rest, endsBefore: next };
}

/** A latest end set first: the earliest is as long as the result keeps, never after the latest. */
export function windowOfLatest(step: Step, latest: number): NonNullable<StepWindow> {
  const earliest = step.endsBefore?.earliest ?? Math.min(step.keeps?.minutes ?? latest, longestAhead);
  return { ...step.endsBefore, earliest: Math.max(earliest, latest), latest };
}

/** An earliest end set first: the latest is at serving, and never before the earliest. */
export function windowOfEarliest(step: Step, earliest: number): NonNullable<StepWindow> {
  return { ...step.endsBefore, earliest, latest: Math.min(step.endsBefore?.latest ?? 0, earliest) };
}
