import type { Plan } from '../../../shared/plan';
import type { Message } from '../../../shared/words';

/** One thing that needs a look. `title` is null when the text is all there is. */
export interface LookItem {
  readonly key: string;
  readonly level: 'stop' | 'watch';
  readonly title: Message | null;
  readonly text: Message;
  readonly more: readonly Message[];
}

/** Safety that is out of bounds, guests who would go without, jobs nobody can do in time; most serious first. */
export function lookItems(plan: Plan): LookItem[] {
  return [
    ...plan.safety.findings.filter((f) => f.level !== 'caution').map((f): LookItem => ({ key: `${f.rule} ${f.about.join(' ')}`, level: f.level === 'stop' ? 'stop' : 'watch', title: f.title, text: f.message, more: [] })),
    ...plan.frying.shortages.map((s): LookItem => ({ key: `short ${s.dish} ${s.from}`, level: 'watch', title: null, text: { id: 'board.short', params: { dish: plan.menu.dishes.find((d) => d.id === s.dish)?.name ?? s.dish, from: s.from, to: s.to, n: Math.round(s.unmet) } }, more: s.remedies })),
    ...plan.day.overloads.map((o): LookItem => ({ key: `late ${o.task}`, level: 'watch', title: null, text: o.message, more: [] })),
    ...[...plan.frying.problems, ...plan.drinks.problems].map((problem, i): LookItem => ({ key: `problem ${i}`, level: 'watch', title: null, text: problem, more: [] })),
  ];
}
