import type { Event } from '../event';
import { breakNotes } from './breaks';
import { busyFigure } from './busy';
import { gasNeed, gasOf } from './gas';
import type { DayInputs } from './draft';
import type { LaidOut } from './lay-out';
import { overloadsOf } from './overload';
import { pinClashes } from './pin-clashes';
import { standingDay, type LetGo } from './printed-jobs';
import { backTo } from './resources';
import { tasksOf } from './tasks';
import type { Message } from '../words';
import type { Overload, Task, TimelinePlan } from './types';
export type { DayInputs } from './draft';

/** What clashes; about a job the cook pinned or gave away the sentence that names the clash, not the general one. */
function allOverloads({ draft: { resources }, booked, placed }: LaidOut): Overload[] {
  const clashes = pinClashes(resources, placed);
  const told = new Set(clashes.map((c) => c.task));
  return [...clashes, ...overloadsOf(resources, placed, () => backTo(resources, booked)).filter((o) => !told.has(o.task))];
}

/**
 * The day: every job on the people, burners, pots, pans and counter places there are. What frying and brewing fixed comes first, what the cook
 * pinned stands, recipe steps go backward from serving, the jobs of the house last. Nobody and nothing is booked twice; what cannot be is
 * named in `overloads`.
 */
export function planDay(event: Event, inputs: DayInputs): TimelinePlan {
  const { laidOut, letGo } = standingDay(event, inputs);
  return dayOf(laidOut, letGo);
}

/** The day as everybody reads it, from what was laid out; `letGo` are printed jobs that could not stay at their minute. */
export function dayOf(laidOut: LaidOut, letGo: readonly LetGo[] = []): TimelinePlan {
  const { draft: { event, resources }, booked, placed, off, noRests, told } = laidOut;
  backTo(resources, booked);
  const tasks = tasksOf(resources, placed);
  const work = tasks.filter((t) => t.kind !== 'rest');
  const long = breakNotes(event, work, resources.values);
  const toldOf = new Set(long.flatMap((m) => (m.id === 'timeline.note.noBreak' || m.id === 'timeline.note.oilNoBreak' ? [m.params.person] : [])));
  const untold = noRests.map((r) => r.message).filter((m) => !((m.id === 'timeline.note.noRest' || m.id === 'timeline.note.noMeal') && toldOf.has(m.params.person)));
  return {
    tasks,
    overloads: allOverloads(laidOut),
    notes: [...long, ...untold, ...told, ...notesOfLetGo(letGo, tasks)],
    off,
    critical: tasks.filter((t) => t.slack === 0).map((t) => t.id),
    busy: event.people.map((p) => ({ person: p.id, minutes: busyFigure(work, p.id) })),
    gas: gasOf(event, tasks),
    gasNeed: gasNeed(event, tasks),
  };
}

/** What could not stay as printed, why, and when it is now. */
const notesOfLetGo = (letGo: readonly LetGo[], tasks: readonly Task[]): Message[] => letGo.flatMap(({ job, name, at, why }): Message[] => {
  const now = tasks.find((t) => t.job === job)?.start;
  return now === undefined || now === at ? [] : [{ id: 'timeline.note.letGo', params: { job: name, why, now } }];
});
