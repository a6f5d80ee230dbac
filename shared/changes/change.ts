import type { Message } from '../words';

/** What a change is about, in the order it is told: what is unsafe, what to buy, what moves in time, how much. */
export type ChangeKind = 'safety' | 'buy' | 'times' | 'amounts';
/** Order in which changes are told. */
export const changeKinds = ['safety', 'buy', 'times', 'amounts'] as const satisfies readonly ChangeKind[];
/** Which way it goes. */
export type ChangeEffect = 'more' | 'fewer' | 'earlier' | 'later' | 'new' | 'gone';

/** One thing that is not the same in two plans. */
export interface Change {
  readonly kind: ChangeKind;
  readonly effect: ChangeEffect;
  readonly message: Message;
  /** Number, amount text or level in the plan before and after; null where it was not there. */
  readonly before: number | string | null;
  readonly after: number | string | null;
  /** Id of the ingredient, dish, pan, task or rule. */
  readonly about: string;
  /** How much it matters beside other changes; grows with the relative change. Only for picking the largest. */
  readonly size: number;
}

/** Relative change, 0 (none) to 1 (from nothing or to nothing). */
export const relative = (before: number, after: number): number => {
  const most = Math.max(Math.abs(before), Math.abs(after));
  return most === 0 ? 0 : Math.abs(after - before) / most;
};

/** A change of a whole number that is shown without decimals; none when both show the same. */
export function countChange(about: string, before: number, after: number, message: (p: { before: number; after: number }) => Message, weight = 1): Change[] {
  const [b, a] = [Math.round(before), Math.round(after)];
  if (a === b) return [];
  return [{ kind: 'amounts', effect: a > b ? 'more' : 'fewer', message: message({ before: b, after: a }), before: b, after: a, about, size: weight * relative(b, a) }];
}

/** Minutes that count as much as a doubling of an amount, for picking the largest changes. */
const minutesOfNote = 60;

/** A change of a clock time; none below a minute. */
export function timeChange(about: string, before: number, after: number, message: (p: { before: number; after: number }) => Message): Change[] {
  const [b, a] = [Math.round(before), Math.round(after)];
  if (a === b) return [];
  return [{ kind: 'times', effect: a > b ? 'later' : 'earlier', message: message({ before: b, after: a }), before: b, after: a, about, size: Math.min(1, Math.abs(a - b) / minutesOfNote) }];
}
