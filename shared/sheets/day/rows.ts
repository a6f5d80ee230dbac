import type { FryingPlan } from '../../frying';
import { minutesPerDay } from '../../measure';
import type { Task } from '../../timeline';
import { stretchOfBatch, stretchOfBowl } from './stretches';

/** What a row of a day plan stands for. */
export type DayRowKind = 'job' | 'stretch' | 'round' | 'serve' | 'wash' | 'rest' | 'cool';

/** One row of a day plan: a job with the part that runs by itself, a fry stretch, a brew round with its fills, or the bringing out, the washing-up, the cooling of leftovers or the breaks of a whole day. */
export interface DayRow {
  readonly key: string;
  readonly kind: DayRowKind;
  /** In order of start; never empty. */
  readonly tasks: readonly Task[];
  /** Minutes from the event's midnight: first start and last end. */
  readonly start: number;
  readonly end: number;
}

/** How far to join: `wall` joins bowls with their batches, all bringing out, washing-up, cooling and breaks of a day; `own` keeps each of those a row, for the page of one helper. */
export type Joining = 'wall' | 'own';

/** A fill longer than this after its round is ready stands in a row of its own, where its time is (our choice). */
const nearMinutes = 30;
const alone = '/by-itself';

/** The row each job belongs to. */
function keysOf(tasks: readonly Task[], frying: FryingPlan, joining: Joining): (task: Task) => readonly [DayRowKind, string] {
  const ids = new Set(tasks.map((t) => t.id));
  const stretches = stretchOfBatch(tasks, frying);
  const ready = new Map<number, number>();
  for (const t of tasks) if (t.kind === 'brew' && t.round !== undefined) ready.set(t.round, Math.max(ready.get(t.round) ?? t.end, t.end));
  return (task) => {
    const { kind, id, round, batch, bowl } = task;
    const stretch = kind === 'fry' ? stretches.get(batch ?? -1) : kind === 'bowl' && joining === 'wall' ? stretchOfBowl(bowl, stretches, frying) : undefined;
    if (stretch !== undefined) return ['stretch', stretch];
    if ((kind === 'serve' || kind === 'wash' || kind === 'rest' || kind === 'cool') && joining === 'wall') return [kind, `${kind}/${Math.floor(task.start / minutesPerDay)}`];
    if (id.startsWith('bins/') && joining === 'wall') return ['serve', `bins/${Math.floor(task.start / minutesPerDay)}`];
    if (round !== undefined && (kind === 'brew' || (kind === 'fill' && task.start - (ready.get(round) ?? -Infinity) <= nearMinutes))) return ['round', `round/${round}`];
    const active = id.endsWith(alone) ? id.slice(0, -alone.length) : id;
    return ['job', ids.has(active) ? active : id];
  };
}

/** Jobs joined into as few rows as a wall or a pocket needs; every job is in exactly one row. Rows by start. */
export function dayRows(tasks: readonly Task[], frying: FryingPlan, joining: Joining): readonly DayRow[] {
  const keyOf = keysOf(tasks, frying, joining);
  const groups = new Map<string, { readonly kind: DayRowKind; readonly tasks: Task[] }>();
  for (const task of tasks) {
    const [kind, key] = keyOf(task);
    const group = groups.get(key) ?? { kind, tasks: [] };
    group.tasks.push(task);
    groups.set(key, group);
  }
  return [...groups].map(([key, group]): DayRow => {
    const own = group.tasks.toSorted((a, b) => a.start - b.start || a.end - b.end);
    return { key, kind: group.kind, tasks: own, start: Math.min(...own.map((t) => t.start)), end: Math.max(...own.map((t) => t.end)) };
  }).toSorted((a, b) => a.start - b.start || a.end - b.end);
}
