import type { Plan } from '../../../shared/plan';
import type { Task } from '../../../shared/timeline';
import { stacked, type DayLane } from './lanes';

/** One thing of the kitchen that a job can occupy; `kind` as jobs name it. */
interface Unit {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
}

const named = (kind: string, list: readonly { readonly id: string; readonly name: string }[]): Unit[] => list.map((x) => ({ kind, id: x.id, name: x.name }));

/** Everything of the kitchen that jobs occupy, one by one: named things by their names, ovens and places at the counter by number. */
function unitsOf({ event: { kitchen } }: Plan, numbered: (kind: 'oven' | 'counter', n: number, of: number) => string): Unit[] {
  const many = (kind: 'oven' | 'counter', of: number): Unit[] => Array.from({ length: of }, (_, k) => ({ kind, id: String(k + 1), name: numbered(kind, k + 1, of) }));
  return [...named('burner', kitchen.burners), ...named('pot', kitchen.pots), ...named('pan', kitchen.pans), ...named('urn', kitchen.dispensers.filter((d) => d.brewsW !== undefined)), ...many('oven', kitchen.ovens), ...many('counter', kitchen.counterPlaces)];
}

const overlap = (a: Task, b: Task): boolean => a.start < b.end - 1e-9 && b.start < a.end - 1e-9;

/**
 * Jobs by the thing they occupy. A job that names its thing stands there; one that needs any burner or pot is drawn on the first of them that is
 * free all the while, so that what is taken at a minute can be counted. Things without a job are left out.
 */
export function thingLanesOf(plan: Plan, from: number, to: number, numbered: (kind: 'oven' | 'counter', n: number, of: number) => string): readonly DayLane[] {
  const units = unitsOf(plan, numbered);
  const held = new Map<string, Task[]>(units.map((u) => [`${u.kind}:${u.id}`, []]));
  const tasks = plan.day.tasks.filter((t) => t.end > from && t.start < to).toSorted((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  for (const task of tasks) for (const need of task.needs) if (need.thing.includes(':')) held.get(need.thing)?.push(task);
  for (const task of tasks) for (const need of task.needs) {
    if (need.thing.includes(':')) continue;
    const free = units.filter((u) => u.kind === need.thing && !(held.get(`${u.kind}:${u.id}`) ?? []).some((o) => overlap(o, task)));
    for (const unit of free.slice(0, need.count)) held.get(`${unit.kind}:${unit.id}`)?.push(task);
  }
  return units.flatMap((u): DayLane[] => {
    const own = held.get(`${u.kind}:${u.id}`) ?? [];
    return own.length === 0 ? [] : [{ id: `${u.kind}:${u.id}`, kind: 'thing', name: u.name, rows: stacked(own) }];
  });
}

/** A piece of a curve: as many in use from here until the next piece. */
export interface CurvePiece { readonly at: number; readonly used: number; readonly has: number }

/** How much of something jobs take over time, and how much there is: `takes` says what a job takes, `has` what there is at a minute. */
export function curveOf(tasks: readonly Task[], from: number, to: number, takes: (task: Task) => number, has: (at: number) => number, turns: readonly number[] = []): readonly CurvePiece[] {
  const taking = tasks.filter((t) => takes(t) > 0 && t.end > from && t.start < to);
  const times = [...new Set([from, ...taking.flatMap((t) => [t.start, t.end]), ...turns].filter((at) => at >= from && at < to))].toSorted((a, b) => a - b);
  return times.map((at) => ({ at, used: taking.filter((t) => t.start <= at + 1e-9 && t.end > at + 1e-9).reduce((sum, t) => sum + takes(t), 0), has: has(at) }));
}

/** Burners a job takes: by name or any. */
export const burnersOf = (task: Task): number => task.needs.reduce((n, need) => n + (need.thing === 'burner' || need.thing.startsWith('burner:') ? need.count : 0), 0);
