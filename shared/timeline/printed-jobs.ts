import { dayOf, type Event, type JobChange } from '../event';
import type { Message } from '../words';
import { bestLayOut } from './best-lay-out';
import { draftDay, type DayDraft, type DayInputs } from './draft';
import type { LaidOut } from './lay-out';
import { pinClashes } from './pin-clashes';
import type { Overload } from './types';

/** A job held for its paper that cannot stay there: the minute that was printed, and why. */
export interface LetGo {
  readonly job: string;
  readonly name: Message;
  readonly at: number;
  readonly why: Message;
}

/** A day laid out, with what was printed kept where it can be. */
export interface StandingDay {
  readonly draft: DayDraft;
  readonly laidOut: LaidOut;
  readonly letGo: readonly LetGo[];
}

/** Each round lets go of the jobs that cannot stay in it; more rounds than this are not needed by a day a household can print. */
const mostRounds = 6;

/** Sentences about who was named, not about the minute: they are no reason to move. */
const aboutWho = new Set(['timeline.pin.person', 'timeline.pin.away', 'timeline.pin.assigned', 'timeline.pin.assignedAway', 'timeline.pin.moved']);

/** Printed jobs that cannot stay in this day. One that only stands in the way of a later job goes when nothing else does: moving the later one may do. */
function cannotStay({ draft, placed }: LaidOut): readonly { readonly job: string; readonly name: Message; readonly at: number; readonly overload: Overload }[] {
  const printed = new Map(placed.flatMap((p) => {
    const { laid } = p.job;
    return laid?.held === 'printed' && laid.at !== undefined ? [[p.job.stretches[0]?.id ?? p.job.id, { job: p.job.id, at: laid.at, name: p.job.stretches[0]?.name }] as const] : [];
  }));
  if (printed.size === 0) return [];
  const found = pinClashes(draft.resources, placed).flatMap((overload) => {
    const p = printed.get(overload.task);
    return p?.name === undefined || aboutWho.has(overload.message.id) ? [] : [{ job: p.job, at: p.at, name: p.name, overload }];
  });
  const first = found.filter((f) => f.overload.message.id !== 'timeline.pin.after');
  return first.length > 0 ? first : found;
}

const without = (event: Event, jobs: ReadonlySet<string>): Event => {
  const day = dayOf(event);
  const changes = day.changes.map((c): JobChange => {
    if (!jobs.has(c.job)) return c;
    const { at: _at, held: _held, ...rest } = c;
    return rest;
  });
  return { ...event, dayJobs: { ...day, changes } };
};

/**
 * The day laid out with every printed job at its minute, as long as it can be done there: with hands and things, after what it waits for, in
 * its time. One that cannot is let go of, placed as any other job, and told. What is pinned by hand or started stays whatever happens.
 */
export function standingDay(event: Event, inputs: DayInputs): StandingDay {
  const letGo: LetGo[] = [];
  let draft = draftDay(event, inputs);
  let laidOut = bestLayOut(draft);
  for (let round = 0; round < mostRounds; round += 1) {
    const gone = cannotStay(laidOut);
    if (gone.length === 0) break;
    letGo.push(...gone.map(({ job, name, at, overload }) => ({ job, name, at, why: overload.message })));
    draft = draftDay(without(event, new Set(letGo.map((g) => g.job))), inputs);
    laidOut = bestLayOut(draft);
  }
  return { draft, laidOut, letGo };
}
