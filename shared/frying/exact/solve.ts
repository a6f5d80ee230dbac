import { fewestBatches, isPlan } from './fixpoint';
import { leastUnmet } from './least-unmet';
import type { FryBatch, FryProblem } from './problem';

/** A fry plan: batches over the portions that are served, and the portions that are not. */
export interface FrySolution {
  /** Served portions' minutes, ascending; `batches` index into it. */
  readonly served: readonly number[];
  /** Minutes of the portions nobody gets. */
  readonly unmet: readonly number[];
  readonly batches: readonly FryBatch[];
  /** Lead in force: the wanted one, or less where the pans cannot keep it. */
  readonly lead: number;
  /** False when the fewest unmet portions are not proven. */
  readonly exact: boolean;
}

/**
 * Fewest batches that serve everybody. If the wanted lead cannot be kept, the longest lead that can; if even without lead somebody goes
 * without, the least unmet portions and the fewest batches for the rest. Served and unmet together are always all portions.
 * @param effort partial plans looked at in a shortage before a quick rule answers (`exact` false then); some tens of milliseconds when not given.
 */
export function solve(given: FryProblem, effort?: number): FrySolution {
  const problem = fromUsefulStart(given);
  const most = Math.max(0, Math.min(problem.lead, problem.hold));
  const whole = withLead(problem, most);
  if (whole !== null) return { served: problem.wanted, unmet: [], batches: whole.batches, lead: whole.lead, exact: true };
  const { unmet, exact } = leastUnmet({ ...problem, lead: 0 }, effort);
  const out = new Set(unmet);
  const served = problem.wanted.filter((_, i) => !out.has(i));
  const rest = withLead({ ...problem, wanted: served }, most);
  if (rest === null) return { served: [], unmet: problem.wanted, batches: [], lead: 0, exact: false };
  return { served, unmet: unmet.map((i) => problem.wanted[i] ?? 0), batches: rest.batches, lead: rest.lead, exact };
}

/** True when everybody can be served, if need be without lead. A lead below zero lets guests wait so long for theirs. */
export const servesAll = (problem: FryProblem): boolean => isPlan(fewestBatches({ ...fromUsefulStart(problem), lead: Math.min(0, problem.lead) }));

/** Nothing lifted before hold allows it is ever eaten; a finite start keeps every search finite, also when no pan is ever free. */
const fromUsefulStart = (p: FryProblem): FryProblem => ({ ...p, earliest: Math.max(p.earliest, (p.wanted[0] ?? 0) - p.hold - p.fry) });

/** Longest whole lead up to `most` that serves everybody; a shorter lead never makes it harder, so halving finds it. */
function withLead(problem: FryProblem, most: number): { batches: readonly FryBatch[]; lead: number } | null {
  const at = (lead: number): readonly FryBatch[] | null => {
    const answer = fewestBatches({ ...problem, lead });
    return isPlan(answer) ? answer : null;
  };
  const wanted = at(most);
  if (wanted !== null) return { batches: wanted, lead: most };
  let best = at(0);
  if (best === null) return null;
  let low = 0;
  let high = Math.ceil(most);
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    const answer = at(mid);
    if (answer === null) high = mid;
    else {
      low = mid;
      best = answer;
    }
  }
  return { batches: best, lead: low };
}
