import type { Event } from '../event';
import { remedyCandidates, withRemedy, type ClashRemedies, type DayRemedy, type Overload, type RemedyCandidate, type RemedyNames } from '../timeline';
import { plan } from './plan';
import type { Plan } from './types';

/** Remedies told for one clash. */
const offered = 3;
/** Days planned for one clash, and clashes looked at: about a second in a worker. */
const most = { tries: 24, clashes: 12 };
/** Names matter to no plan: the edit that makes a remedy gives the real ones. */
const noNames: RemedyNames = { helper: 'one more', ring: 'ring', urn: 'urn', pot: 'pot' };

const allTasks = (o: Overload): readonly string[] => [o.task, ...o.also];
const stops = (p: Plan): number => p.safety.findings.filter((f) => f.level === 'stop').length;

/** The remedy when the day planned with it has this clash no more and none that was not there before; else null. */
function proven(event: Event, before: Plan, overload: Overload, candidate: RemedyCandidate): DayRemedy | null {
  const after = plan(withRemedy(event, candidate.change, noNames));
  const known = new Set(before.day.overloads.flatMap(allTasks));
  const left = new Set(after.day.overloads.flatMap(allTasks));
  if (allTasks(overload).some((t) => left.has(t)) || [...left].some((t) => !known.has(t)) || stops(after) > stops(before)) return null;
  if (after.frying.shortages.length > before.frying.shortages.length || after.drinks.problems.length > before.drinks.problems.length) return null;
  const moved = candidate.change.kind === 'move' ? candidate.change.job : '';
  const old = new Map(before.day.tasks.map((t) => [t.id, t]));
  const otherJobs = after.day.tasks.filter((t) => {
    const was = old.get(t.id);
    return was !== undefined && (t.job ?? t.id) !== moved && (was.start !== t.start || was.who.join(' ') !== t.who.join(' '));
  }).length;
  return {
    change: candidate.change, message: candidate.message, cost: { lateMinutes: 0, movedMinutes: candidate.movedMinutes, helperMinutes: candidate.helperMinutes, otherJobs },
    alsoEnds: before.day.overloads.filter((o) => o !== overload && !allTasks(o).some((t) => left.has(t))).map((o) => o.task),
  };
}

/**
 * For each clash of the day up to three ways out, least trouble first and of different kinds, each planned as a whole (guests to safety) and
 * kept only when this clash is gone, no other has come, and no safety rule says stop that did not before. Some hundred milliseconds for each clash:
 * for a worker, never while dragging. Plain values, so that a worker can send them; `withRemedy` makes the change.
 * @param before the plan of the event where it is known already.
 */
export function dayRemedies(event: Event, before: Plan = plan(event)): ClashRemedies[] {
  return before.day.overloads.slice(0, most.clashes).map((overload) => {
    const remedies: DayRemedy[] = [];
    const kinds = new Set<string>();
    let tried = 0;
    for (const candidate of remedyCandidates(event, before.day, overload)) {
      if (remedies.length >= offered || tried >= most.tries) break;
      if (kinds.has(candidate.kind)) continue;
      tried += 1;
      const remedy = proven(event, before, overload, candidate);
      if (remedy === null) continue;
      kinds.add(candidate.kind);
      remedies.push(remedy);
    }
    return { task: overload.task, remedies, tried };
  });
}
