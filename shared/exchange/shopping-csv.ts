import type { ShoppingLine } from '../buying';
import { plain, type Amount } from '../measure';
import type { Plan } from '../plan';
import { say, sayMessage, type Formats, type PlainWordId } from '../words';
import { csv } from './csv';
import { originText, sectionText } from './shopping-names';

const numberOf = (amount: Amount): string => plain(amount.amount.round(3));

/** Heads of the table, in order. */
const heads: readonly PlainWordId[] = [
  'report.csv.section', 'report.csv.ingredient', 'report.csv.need', 'report.csv.larder', 'report.csv.buy', 'report.csv.unit', 'report.csv.packs', 'report.csv.for', 'report.csv.cost',
  'buying.csv.bought', 'buying.csv.state', 'buying.csv.when', 'buying.csv.who', 'buying.csv.note',
];

/**
 * The shopping list as a table for a spreadsheet: one row for each food, thing and own line, in walking order, then what is borrowed; numbers
 * with a decimal point.
 */
export function shoppingCsv(plan: Plan, formats: Formats): string {
  const nameOf = originText(plan, formats);
  const { lines, sections, borrowed } = plan.buying;
  const place = (section: string): number => (sections.includes(section) ? sections.indexOf(section) : sections.length);
  const rowOf = (line: ShoppingLine): string[] => [
    sectionText(line.section, formats), line.name, numberOf(line.need), numberOf(line.larder), numberOf(line.buy), line.need.unit,
    line.packs.map(({ count, size }) => `${count} × ${numberOf(size)} ${size.unit}`).join('; '),
    line.origins.map(({ dish }) => nameOf(dish)).join('; '),
    line.cost ?? '',
    numberOf(line.bought), say(formats, `buying.state.${line.state}`), line.when ?? '', line.shopper ?? '', line.note === null ? '' : sayMessage(formats, line.note),
  ];
  const lent = borrowed.map((b) => [
    say(formats, 'buying.section.borrow'), b.name, String(b.count), '', '', 'piece', '', '', '', '', say(formats, b.returned ? 'buying.lent.returned' : b.here ? 'buying.lent.here' : 'buying.lent.wanted'), '', '',
    b.from === '' ? '' : say(formats, 'buying.lent.from', { from: b.from }),
  ]);
  return csv([heads.map((id) => say(formats, id)), ...lines.toSorted((a, b) => place(a.section) - place(b.section)).map(rowOf), ...lent]);
}
