import type { Problem } from '../../shared/host';
import type { WordId, WordParams } from '../../shared/words';
import { isWordId, sayLoose } from '../../shared/words';
import { plainFormats } from './plain-formats';

/** Ids of the sentences a host says when something goes wrong. */
export type HostWordId = Extract<WordId, `host.${string}`>;

/** The words of a host sentence. They name paths and codes only, so no event's number formats are needed. */
export function tell<K extends HostWordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string {
  return sayLoose(plainFormats, id, params[0] as Record<string, string | number> | undefined);
}

/** Something a cook can understand and mend. `code` is the sentence's id without `host.`. */
export class HostProblem extends Error {
  readonly problem: Problem;

  private constructor(problem: Problem) {
    super(problem.message);
    this.name = 'HostProblem';
    this.problem = problem;
  }

  /** A problem whose sentence is `id`, and whose remedy is `id.mend` where the catalogue has one. */
  static of<K extends HostWordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): HostProblem {
    const mend = `${id}.mend`;
    const message = tell(id, ...params);
    return new HostProblem({ code: id.slice('host.'.length), message, ...(isWordId(mend) ? { mend: sayLoose(plainFormats, mend) } : {}) });
  }
}

/** What travels to the face for anything thrown: a problem as it is, everything else as a fault of the program. */
export function problemOf(error: unknown): Problem {
  if (error instanceof HostProblem) return error.problem;
  return HostProblem.of('host.fault', { what: error instanceof Error ? error.message : String(error) }).problem;
}

/** A problem on one line: what is wrong, and what to do. */
export function problemLine(error: unknown): string {
  const { message, mend } = problemOf(error);
  return mend === undefined ? message : `${message} ${mend}`;
}
