import type { Problem } from '../../../../shared/host';
import type { Message } from '../../../../shared/words';
import type { Speaker } from '../../../app/speak';

/** A problem of the core or of the host, in words with what to do. */
export function sayProblem(t: Speaker, problem: Message | Problem): string {
  if (!('message' in problem)) return t.message(problem);
  return problem.mend === undefined ? t.loose(problem.message) : `${t.loose(problem.message)} ${problem.mend}`;
}
