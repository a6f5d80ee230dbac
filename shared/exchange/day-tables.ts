import type { Plan } from '../plan';
import { say, sayMessage, type Formats, type PlainWordId } from '../words';
import { csv } from './csv';
import { stampOf, wallSeconds } from './calendar-time';

const heads: readonly PlainWordId[] = ['calendar.csv.day', 'calendar.csv.from', 'calendar.csv.to', 'calendar.csv.job', 'calendar.csv.who', 'calendar.csv.slack'];

const namesOf = (plan: Plan, who: readonly string[]): string[] => who.map((id) => plan.event.people.find((p) => p.id === id)?.name ?? id);

const own = (plan: Plan, person: string | undefined): Plan['day']['tasks'] => plan.day.tasks.filter((t) => person === undefined || t.who.includes(person));

/** The day as a table for a spreadsheet, one row for each job in order of start; of one helper when named. Days as YYYY-MM-DD, times as HH:MM. */
export function dayCsv(plan: Plan, f: Formats, person?: string): string {
  const when = (minute: number): { readonly day: string; readonly time: string } => {
    const stamp = stampOf(wallSeconds(plan.event.day, Math.round(minute)));
    return { day: `${stamp.slice(0, 4)}-${stamp.slice(4, 6)}-${stamp.slice(6, 8)}`, time: `${stamp.slice(9, 11)}:${stamp.slice(11, 13)}` };
  };
  return csv([heads.map((id) => say(f, id)), ...own(plan, person).map((t) => [
    when(t.start).day, when(t.start).time, when(t.end).time, sayMessage(f, t.name), namesOf(plan, t.who).join('; '), String(t.slack),
  ])]);
}

/** The day as plain text, one line for each job; of one helper when named. No line end at the end. */
export const dayText = (plan: Plan, f: Formats, person?: string): string => [
  say(f, 'report.title', plan.event), '',
  ...own(plan, person).map((t) => say(f, 'report.task', { at: t.start, end: t.end, name: sayMessage(f, t.name), who: namesOf(plan, t.who) })),
].join('\n');
