import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import type { Formats } from '../../../shared/words';

/** What the words of a job are made from. */
export interface PrepContext {
  readonly plan: Plan;
  readonly formats: Formats;
  readonly names: Names;
}
