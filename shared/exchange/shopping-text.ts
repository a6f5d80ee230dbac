import { listFor, type ShoppingLine } from '../buying';
import { amountText } from '../measure';
import type { Plan } from '../plan';
import { say, type Formats } from '../words';
import { sectionText } from './shopping-names';

function lineText(line: ShoppingLine, f: Formats): string {
  const [first, ...more] = line.packs;
  const packs = first === undefined || (more.length === 0 && first.count === 1) ? ''
    : ` (${line.packs.map((p) => say(f, 'sheets.shopping.packs', { count: p.count, size: f.amountOf(amountText(p.size), line.ingredient) })).join(' + ')})`;
  return `[ ] ${line.name}: ${f.amountOf(amountText(line.buy), line.ingredient)}${packs}`;
}

const group = (head: string, lines: readonly string[]): string[] => (lines.length === 0 ? [] : ['', head, ...lines]);

/**
 * The list as plain text to send to somebody: by section in walking order, a box before each line, what is left for later and what is borrowed
 * at the end, and the known cost with what it leaves out. No line end at the end.
 * @param who name of a shopper for their lines only; left out: all.
 */
export function shoppingText(plan: Plan, f: Formats, who?: string | null): string {
  const { title, day } = plan.event;
  const { buying } = plan;
  const list = listFor(buying, who);
  const borrow = who === undefined ? buying.borrowed.filter((b) => !b.here && !b.returned) : [];
  return [
    say(f, who === undefined || who === null ? 'buying.text.title' : 'buying.text.titleFor', { title, day, who: who ?? '' }),
    ...list.sections.flatMap(({ section, lines }) => group(sectionText(section, f), lines.map((line) => lineText(line, f)))),
    ...group(say(f, 'buying.section.later'), list.later.map((line) => lineText(line, f))),
    ...group(say(f, 'buying.section.borrow'), borrow.map((b) => `[ ] ${say(f, 'buying.lent.line', { count: b.count, name: b.name, from: b.from })}`)),
    ...(who === undefined && buying.cost !== null ? ['', say(f, 'buying.total', { cost: buying.cost, unpriced: buying.unpriced })] : []),
  ].join('\n');
}
