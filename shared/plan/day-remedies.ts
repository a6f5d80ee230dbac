import type { Event } from '../event';
import { remedyCandidates, withRemedy, type ClashRemedies, type DayRemedy, type Overload, type RemedyCandidate, type RemedyNames } from '../timeline';
import { plan } from './plan';
import type { Plan } from './types';

/** Remedies told for one clash. */
const offered = 3;
/** Days planned for one clash, of them with changes of one kind, and clashes looked at. */
const most = { tries: 24, ofOneKind: 8, clashes: 12 };
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
 * Up to three ways out of one clash of the day, least trouble first and of different kinds, each planned as a whole (guests to safety) and kept
 * only when this clash is gone, no other has come, and no safety rule says stop that did not before. Some hundred milliseconds: for a
 * worker or a press of a button, never while dragging. Plain values, so that a worker can send them; `withRemedy` makes the change.
 * @param before the plan of the event. @param overload one of `before.day.overloads`.
 */
export function remediesOf(event: Event, before: Plan, overload: Overload): ClashRemedies {
  const remedies: DayRemedy[] = [];
  const kinds = new Set<string>();
  const asked = new Map<string, number>();
  let tried = 0;
  for (const candidate of remedyCandidates(event, before.day, overload)) {
    if (remedies.length >= offered || tried >= most.tries) break;
    const times = asked.get(candidate.kind) ?? 0;
    if (kinds.has(candidate.kind) || times >= most.ofOneKind) continue;
    asked.set(candidate.kind, times + 1);
    tried += 1;
    const remedy = proven(event, before, overload, candidate);
    if (remedy === null) continue;
    kinds.add(candidate.kind);
    remedies.push(remedy);
  }
  return { task: overload.task, remedies, tried };
}

/** The remedies of every clash of the day (the first twelve), in their order; see `remediesOf`. Seconds where much clashes: for a worker. */
export function dayRemedies(event: Event, before: Plan = plan(event)): ClashRemedies[] {
  return before.day.overloads.slice(0, most.clashes).map((overload) => remediesOf(event, before, overload));
}
