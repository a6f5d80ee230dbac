import type { Plan } from '../plan';
import { say, type Formats } from '../words';
import { attentionLines } from './text-attention';
import { dayLines, drinksLines, fryingLines, guestLines, menuLines, shoppingLines, type Lines } from './text-parts';

const part = (heading: string, lines: Lines): string[] => (lines.length === 0 ? [] : ['', heading, ...lines.map((line) => `  ${line}`)]);

/** The plan on one page of plain text that a cook understands: no codes, no ids, parts without content left out. No line end at the end. */
export function planText(plan: Plan, f: Formats): string {
  const { title, day, opensAt, closesAt } = plan.event;
  return [
    say(f, 'report.title', { title, day, opensAt, closesAt }),
    ...part(say(f, 'report.safety'), attentionLines(plan, f)),
    ...part(say(f, 'report.guests'), guestLines(plan, f)),
    ...part(say(f, 'report.menu'), menuLines(plan, f)),
    ...part(say(f, 'report.shopping'), shoppingLines(plan, f)),
    ...part(say(f, 'report.frying'), fryingLines(plan, f)),
    ...part(say(f, 'report.drinks'), drinksLines(plan, f)),
    ...part(say(f, 'report.day'), dayLines(plan, f)),
    '',
    say(f, 'report.guidance'),
  ].join('\n');
}
