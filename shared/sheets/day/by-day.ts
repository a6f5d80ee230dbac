import { minutesPerDay } from '../../measure';
import type { Task } from '../../timeline';
import type { Formats } from '../../words';

/** Jobs grouped by the day they start on, relative to the event's day, in order. */
export function byDay(tasks: readonly Task[]): readonly { readonly day: number; readonly tasks: readonly Task[] }[] {
  const days = new Map<number, Task[]>();
  for (const task of tasks) {
    const day = Math.floor(task.start / minutesPerDay);
    days.set(day, [...(days.get(day) ?? []), task]);
  }
  return [...days].sort(([a], [b]) => a - b).map(([day, own]) => ({ day, tasks: own }));
}

/** A clock time without its day, for a table whose heading names the day. Minutes from the event's midnight. */
export const clockInDay = (f: Formats, at: number): string => f.clock(at - Math.floor(at / minutesPerDay) * minutesPerDay);
