import { changes as changesOf, type Change } from '../../shared/changes';
import type { Plan } from '../../shared/plan';
import type { Message } from '../../shared/words';

/** What the last edit changed. The list is made when it is first read: during a drag nobody reads most of them. */
export class Effects {
  readonly cause: Message;
  readonly before: Plan;
  /** Edits under one key are one step. */
  readonly merge: string | null;
  private readonly after: Plan | null;
  private made: readonly Change[] | null = null;

  /** `after`: null when the edit could not be planned. */
  constructor(cause: Message, before: Plan, merge: string | null, after: Plan | null) {
    this.cause = cause;
    this.before = before;
    this.merge = merge;
    this.after = after;
  }

  get list(): readonly Change[] {
    this.made ??= this.after === null ? [] : changesOf(this.before, this.after);
    return this.made;
  }
}
