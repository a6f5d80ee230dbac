import type { Plan } from '../../../shared/plan';
import type { Finding } from '../../../shared/safety';
import type { Message } from '../../../shared/words';
import { idleFlasks } from '../drinks/idle-flasks';
import { pagesOutOfDate, staleMessage } from '../day/paper';
import { troubles } from '../day/trouble';

/** One thing that needs a look. `title` is null when the text is all there is. */
export interface LookItem {
  readonly key: string;
  readonly level: 'stop' | 'watch';
  readonly title: Message | null;
  readonly text: Message;
  readonly more: readonly Message[];
  /** The finding of safety it tells, with its measured value, limit and source. */
  readonly finding?: Finding;
}

/** Heading of a finding; where a rule finds several things, each is told apart by its dish, pan or flask. */
function headingOf(finding: Finding, plan: Plan): Message {
  if (plan.safety.findings.filter((f) => f.rule === finding.rule).length === 1) return finding.title;
  const { dishes } = plan.menu;
  const of = [...dishes.filter((d) => finding.about.includes(d.id)), ...[...plan.event.kitchen.pans, ...plan.event.kitchen.pots, ...plan.event.kitchen.circuits].filter((x) => finding.about.includes(x.id))][0]?.name;
  return of === undefined ? finding.title : { id: 'safety.titleOf', params: { title: finding.title, of } };
}

/** Safety that is out of bounds first, then what the pots and the keeping times of the meal do not allow, jobs that do not fit in order of time, warnings, guests who would go without. */
export function lookItems(plan: Plan): LookItem[] {
  const findings = (level: 'stop' | 'warn'): LookItem[] =>
    plan.safety.findings.filter((f) => f.level === level).map((f) => ({ key: `${f.rule} ${f.about.join(' ')}`, level: level === 'stop' ? 'stop' : 'watch', title: headingOf(f, plan), text: f.message, more: [], finding: f }));
  return [
    ...findings('stop'),
    ...plan.cooking.notes.filter((n) => n.level === 'watch').map((n): LookItem => ({ key: `cooking ${n.dish} ${n.message.id}`, level: 'watch', title: null, text: n.message, more: n.ways })),
    ...troubles(plan).map(({ key, title, sentences: [text = title, ...more] }): LookItem => ({ key, level: 'watch', title, text, more })),
    ...pagesOutOfDate(plan).map((page): LookItem => ({ key: `paper ${page.person}`, level: 'watch', title: { id: 'view.day.paper.title', params: { who: page.name, version: page.version } }, text: staleMessage(page), more: [] })),
    ...findings('warn'),
    ...plan.frying.shortages.map((s): LookItem => ({ key: `short ${s.dish} ${s.from}`, level: 'watch', title: null, text: { id: 'board.short', params: { dish: plan.menu.dishes.find((d) => d.id === s.dish)?.name ?? s.dish, from: s.from, to: s.to, n: Math.round(s.unmet) } }, more: s.remedies })),
    ...idleFlasks(plan).map((d): LookItem => ({ key: `idle ${d.id}`, level: 'watch', title: null, text: { id: 'view.drinks.idle', params: { flask: d.name } }, more: [] })),
    ...[...plan.frying.problems, ...plan.drinks.problems, ...plan.drinks.advice].map((problem, i): LookItem => ({ key: `problem ${i}`, level: 'watch', title: null, text: problem, more: [] })),
  ];
}
