import type { Plan } from '../../../shared/plan';
import type { Task } from '../../../shared/timeline';

/** A row of the day's picture: a helper, a thing of the kitchen, what runs by itself, or jobs nobody could be found for. */
export interface DayLane {
  readonly id: string;
  readonly kind: 'person' | 'thing' | 'itself' | 'nobody';
  readonly name: string;
  /** Jobs side by side in as few rows as they need; jobs that share somebody's attention overlap in time. */
  readonly rows: readonly (readonly Task[])[];
}

/** Puts jobs into rows so that none overlaps another in its row; in order of start, each into the first row that is free. */
export function stacked(tasks: readonly Task[]): readonly (readonly Task[])[] {
  const rows: Task[][] = [];
  for (const task of [...tasks].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const free = rows.find((row) => (row.at(-1)?.end ?? -Infinity) <= task.start);
    if (free === undefined) rows.push([task]);
    else free.push(task);
  }
  return rows;
}

/** The rows of one stretch of time, helpers first in the order of the event; of one helper only when `person` is given. */
export function lanesOf(plan: Plan, from: number, to: number, names: { readonly itself: string; readonly nobody: string }, person: string | null = null): readonly DayLane[] {
  const tasks = plan.day.tasks.filter((t) => t.end > from && t.start < to);
  const people = plan.event.people.filter((p) => person === null || p.id === person)
    .map((p) => ({ id: p.id, kind: 'person' as const, name: p.name, rows: stacked(tasks.filter((t) => t.who.includes(p.id))) }));
  if (person !== null) return people;
  const nobody = stacked(tasks.filter((t) => t.who.length === 0 && t.attention > 0));
  const itself = stacked(tasks.filter((t) => t.who.length === 0 && t.attention === 0));
  return [
    ...people,
    ...(nobody.length > 0 ? [{ id: 'nobody', kind: 'nobody' as const, name: names.nobody, rows: nobody }] : []),
    ...(itself.length > 0 ? [{ id: 'itself', kind: 'itself' as const, name: names.itself, rows: itself }] : []),
  ];
}

/** First start and last end of the jobs on the event's own day, and of the night it goes on into, in whole hours; null when there is none. */
export function dayHours(plan: Plan): { readonly from: number; readonly to: number } | null {
  const own = plan.day.tasks.filter((t) => t.start >= 0 && t.start < Math.max(1440, plan.event.closesAt + 180));
  if (own.length === 0) return null;
  const last = Math.max(...own.map((t) => Math.min(t.end, plan.event.closesAt + 180)));
  return { from: Math.floor(Math.min(...own.map((t) => t.start)) / 60) * 60, to: Math.ceil(last / 60) * 60 };
}
