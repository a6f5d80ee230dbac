import type { Figure } from '../figure';
import type { Minutes } from '../measure';
import type { Message } from '../words';

/** What a task is about; decides its lane and where it is printed. */
export type TaskKind = 'shop' | 'step' | 'setUp' | 'heatOil' | 'fry' | 'bowl' | 'brew' | 'fill' | 'watchOil' | 'serve' | 'clean' | 'cool' | 'oilAway' | 'own' | 'rest' | 'wash' | 'store' | 'check';

/** One job of somebody, or one thing that runs by itself. */
export interface Task {
  /** Stable under small edits: made from what it is, never from its place in a list. */
  readonly id: string;
  readonly kind: TaskKind;
  readonly name: Message;
  readonly start: Minutes;
  readonly end: Minutes;
  /** Ids of people; empty when it runs by itself or nobody could be found (see `overloads`). */
  readonly who: readonly string[];
  /** Share of each person named: 0 runs by itself, 1 fully busy. Sums to at most 1 per person and minute. */
  readonly attention: number;
  readonly needs: readonly { readonly thing: string; readonly count: number }[];
  readonly dish?: string;
  readonly station?: string;
  readonly batch?: number;
  readonly bowl?: number;
  readonly round?: number;
  /** Which cooking of a dish of the meal, counted from 1; absent for what is done once for all of them. */
  readonly cooking?: number;
  readonly after: readonly string[];
  /** Minutes it could start later with everything still done in its window, when the jobs after it move on as far as they may; 0 = cannot slip. */
  readonly slack: number;
  readonly note?: Message;
  /** Id of the job it is a stretch of: what a change of the cook's is laid down under. The task's own id when absent. */
  readonly job?: string;
  /** Roles asked for it, best first. */
  readonly roles?: readonly string[];
  /** Its minute stands, and why. */
  readonly held?: 'pinned' | 'started' | 'printed';
  /** Somebody was named for it. */
  readonly given?: boolean;
}

/** A job the cook has switched off, and what then is not done. */
export interface OffJob {
  readonly job: string;
  readonly name: Message;
  readonly message: Message;
}

/** A job that could not be placed in time, and what clashes. */
export interface Overload {
  readonly task: string;
  /** Minutes until the things it needs are free; 0 when it has nobody yet, for then no time would be better. */
  readonly lateMinutes: number;
  readonly message: Message;
  /** Ids of other tasks the same sentence speaks of. */
  readonly also: readonly string[];
  /** The smallest set of jobs that clash over a thing, where it is the things alone; take any one away and the rest fits. */
  readonly clash?: Clash | undefined;
}

/** Tasks that clash, and the sentence that names them. */
export interface Clash {
  readonly tasks: readonly string[];
  readonly message: Message;
}

/** A gas cylinder and what the day draws from it. */
export interface GasPlan {
  readonly cylinder: string;
  /** Kilograms each of its burners burns, in the day. */
  readonly burners: readonly { readonly burner: string; readonly kg: Figure }[];
  readonly needKg: Figure;
  /** Minutes it feeds all of its burners full on, down to the share not counted on. */
  readonly lasts: Figure;
  /** Kilograms counted on. */
  readonly usableKg: number;
}

/** Bottled gas of the day, all burners together. */
export interface GasNeed {
  /** Kilograms the day burns. */
  readonly usedKg: Figure;
  /** Kilograms to have in the cylinders, with the share of each that is not counted on: the one figure that Kitchen, the shopping list and the checklist tell. */
  readonly wantedKg: Figure;
}

/** What the room `timeline` computes. */
export interface TimelinePlan {
  /** Ordered by start, then id. */
  readonly tasks: readonly Task[];
  readonly overloads: readonly Overload[];
  /** Cautions about the day as a whole: who has no break. */
  readonly notes: readonly Message[];
  /** Jobs that are left out. */
  readonly off: readonly OffJob[];
  /** Ids of tasks with no slack. */
  readonly critical: readonly string[];
  /** Busy minutes of each person. */
  readonly busy: readonly { readonly person: string; readonly minutes: Figure }[];
  /** Cylinders that a burner draws from. */
  readonly gas: readonly GasPlan[];
  /** Bottled gas of the whole day; null where none is burned. */
  readonly gasNeed: GasNeed | null;
}
