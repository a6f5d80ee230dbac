import type { Message } from '../words';
import type { TaskKind } from './types';

/** A thing a job occupies: `burner`, `pot`, `pan`, `oven`, `counter`, or one of them by id (`burner:big-ring`). */
export interface Need {
  readonly thing: string;
  readonly count: number;
}

/** One stretch of a job. Stretches of a job follow each other without a gap. */
export interface Stretch {
  /** Id of the task it becomes. */
  readonly id: string;
  /** Whole minutes unless the frying or brewing plan says otherwise. */
  readonly minutes: number;
  /** Share of one person; 0 runs by itself. */
  readonly attention: number;
  readonly needs: readonly Need[];
  readonly name: Message;
}

/** What a job is about; copied to its tasks. */
export interface About {
  readonly dish?: string;
  readonly station?: string;
  readonly batch?: number;
  readonly bowl?: number;
  readonly round?: number;
  /** Which cooking of a dish of the meal, counted from 1. */
  readonly cooking?: number;
}

/** What the cook has laid down about a job: its minute and why it stands, and who is to do it. */
export interface Laid {
  readonly at?: number;
  readonly held: 'pinned' | 'started' | 'printed';
  readonly who?: string;
  /** The roles asked when nobody was named. */
  readonly roles: readonly string[];
}

/** Something to be placed on the day. */
export interface Job {
  readonly id: string;
  readonly kind: TaskKind;
  readonly stretches: readonly Stretch[];
  /** Who does it, best first; a role of the people list. Any helper when nobody of them is free. */
  readonly roles: readonly string[];
  /** Earliest start and latest end, minutes from midnight. */
  readonly earliest: number;
  readonly latest: number;
  /** Earliest end: what it makes does not keep longer. */
  readonly notDoneBefore: number;
  /** Place as late as possible (just in time) or as early as possible. */
  readonly towards: 'late' | 'early';
  /** Minutes to be done before the latest end, where there is room. */
  readonly spare: number;
  /** Ids of jobs that end before it starts. */
  readonly after: readonly string[];
  readonly about: About;
  readonly note?: Message;
  /** What the cook has laid down about it. */
  readonly laid?: Laid;
  /** May lie outside everybody's hours without being a fault: shopping, putting the oil away. */
  readonly anyTime: boolean;
}

/** Length of a job. Unit: minutes. */
export const lengthOf = (job: Job): number => job.stretches.reduce((n, s) => n + s.minutes, 0);

/** A job at a place. `who` null: nobody needed or nobody found. */
export interface Placed {
  readonly job: Job;
  readonly start: number;
  readonly who: string | null;
  /** False when the things it needs were not free: they are not booked. */
  readonly things: boolean;
  /** Minutes it is done before its window opens, because nothing later was free. */
  readonly tooEarly: number;
  /** The household does it, outside the hours of the day. */
  readonly home: boolean;
  /** What it made stands in its pots until this minute. */
  readonly full?: { readonly until: number };
}

/** A job of one stretch at a fixed time. */
export const fixedJob = (
  j: Pick<Job, 'id' | 'kind' | 'roles' | 'about'> & { readonly name: Message; readonly start: number; readonly end: number; readonly attention: number; readonly needs: readonly Need[]; readonly slide?: number; readonly after?: readonly string[]; readonly note?: Message },
): Job => ({
  id: j.id, kind: j.kind, roles: j.roles, about: j.about, after: j.after ?? [], anyTime: false, towards: 'early', spare: 0,
  stretches: [{ id: j.id, minutes: j.end - j.start, attention: j.attention, needs: j.needs, name: j.name }],
  earliest: j.start, latest: j.end + (j.slide ?? 0), notDoneBefore: j.start,
  ...(j.note === undefined ? {} : { note: j.note }),
});
