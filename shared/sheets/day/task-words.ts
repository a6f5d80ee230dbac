import type { Task } from '../../timeline';
import { say } from '../../words';
import type { SheetContext } from '../types';

/** Who does it: names, "by itself", or that nobody could be found. */
export function whoWords(task: Task, { formats: f, names }: SheetContext): string {
  if (task.who.length > 0) return f.list(task.who.map(names.person));
  return say(f, task.attention === 0 ? 'sheets.day.byItself' : 'sheets.day.nobody');
}

/** Everybody with a hand in one of these jobs, each once; what runs by itself needs no name beside jobs that do. */
export function allWho(tasks: readonly Task[], context: SheetContext): string {
  const hands = tasks.filter((t) => t.attention > 0 || t.who.length > 0);
  return context.formats.list([...new Set((hands.length > 0 ? hands : tasks).map((t) => whoWords(t, context)))]);
}

/** What these jobs are done with: pans, pots, burners, places; each once, with the most there are at a time. */
export function withWords(tasks: readonly Task[], { formats: f, names }: SheetContext): string {
  const most = new Map<string, number>();
  for (const need of tasks.flatMap((t) => t.needs)) most.set(need.thing, Math.max(most.get(need.thing) ?? 0, need.count));
  return [...most].map(([thing, count]) => say(f, 'sheets.day.thing', { thing: names.thing(thing), count })).join(', ');
}
