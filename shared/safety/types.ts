import type { Figure } from '../figure';
import type { Message } from '../words';

/** How serious: `stop` do not go on like this; `warn` change it; `caution` keep an eye on it. */
export type Level = 'stop' | 'warn' | 'caution';

/** One thing that needs a look. */
export interface Finding {
  readonly rule: string;
  readonly level: Level;
  /** Measured value and limit with units, for files and the working. */
  readonly measured: { readonly value: number; readonly unit: string };
  readonly limit: { readonly value: number; readonly unit: string };
  /** The measured value with its working, where a sum stands behind it. */
  readonly figure?: Figure;
  /** What is wrong and what to do. */
  readonly message: Message;
  /** Short heading. */
  readonly title: Message;
  readonly source: string;
  /** Ids of the dish, pan, dispenser, task … it is about. */
  readonly about: readonly string[];
}
/** A rule that could not be judged. `needs` says which input is missing; `notYet` when the product does not check it yet. */
export interface NotChecked {
  readonly rule: string;
  readonly needs: Message;
  readonly notYet: boolean;
}
/** What the room `safety` computes. */
export interface SafetyPlan {
  /** Ordered stop, warn, caution, then rule. */
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
  /** Rules judged and found in order. */
  readonly inOrder: readonly string[];
}

/** The rules that the event leaves open: an answer is missing. What every face counts as "could not be checked". */
export const openQuestions = ({ notChecked }: Pick<SafetyPlan, 'notChecked'>): readonly NotChecked[] => notChecked.filter((rule) => !rule.notYet);
