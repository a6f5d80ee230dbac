import type { Plan } from '../plan';
import { openQuestions } from '../safety';
import { say, sayMessage, type Formats } from '../words';
import type { Lines } from './text-parts';

/** Jobs without hands or things, each with what would help, and who has no break. */
function dayTroubles({ day }: Plan, f: Formats): Lines {
  const nameOf = (id: string): string => {
    const task = day.tasks.find((t) => t.id === id);
    return task === undefined ? id : sayMessage(f, task.name);
  };
  return day.overloads.map((o) => say(f, 'report.overload', { name: nameOf(o.task), message: o.message }));
}

/**
 * What needs attention: safety to stop for first, then jobs that nobody can do, food and drinks that come short, then milder safety,
 * breaks, and how much could not be checked. What helps against a shortage of fried food stands with the frying.
 */
export function attentionLines(plan: Plan, f: Formats): Lines {
  const { safety, drinks, frying, menu, day } = plan;
  const findings = (stop: boolean): Lines => safety.findings.filter((x) => (x.level === 'stop') === stop).map(({ level, message }) => say(f, 'report.finding', { level, text: sayMessage(f, message) }));
  const missing = openQuestions(safety).length;
  const lines = [
    ...findings(true), ...dayTroubles(plan, f),
    ...frying.shortages.map((s) => say(f, 'report.unmet', { dish: menu.dishes.find((d) => d.id === s.dish)?.name ?? s.dish, unmet: s.unmet, from: s.from, to: s.to })),
    ...drinks.problems.map((problem) => sayMessage(f, problem)),
    ...plan.cooking.notes.filter((n) => n.level === 'watch').map((n) => [n.message, ...n.ways].map((m) => sayMessage(f, m)).join(' ')),
    ...findings(false), ...day.notes.map((note) => sayMessage(f, note)),
  ];
  return [...(lines.length === 0 ? [say(f, 'report.inOrder')] : lines), ...(missing === 0 ? [] : [say(f, 'report.notChecked', { count: missing })])];
}
