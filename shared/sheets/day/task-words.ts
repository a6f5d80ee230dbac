import type { Task } from '../../timeline';
import { say } from '../../words';
import type { SheetContext } from '../types';

/** Who does it: names, "by itself", or that nobody could be found. */
export function whoWords(task: Task, { formats: f, names }: SheetContext): string {
  if (task.who.length > 0) return f.list(task.who.map(names.person));
  return say(f, task.attention === 0 ? 'sheets.day.byItself' : 'sheets.day.nobody');
}

/** What it is done with: pans, pots, burners, places. */
export function withWords(task: Task, { formats: f, names }: SheetContext): string {
  return task.needs.map((n) => say(f, 'sheets.day.thing', { thing: names.thing(n.thing), count: n.count })).join(', ');
}

/** Tasks that cannot start a minute later without making something late. */
export const cannotSlip = (task: Task): boolean => task.slack <= 0;
