import type { Plan } from '../../shared/plan';
import type { Message } from '../../shared/words';

/** One thing that differs between two plans. */
export interface Change {
  readonly id: string;
  readonly message: Message;
}

/** What differs between two plans, most important first. */
export function changesOf(before: Plan, after: Plan): readonly Change[] {
  void before;
  void after;
  return [];
}
