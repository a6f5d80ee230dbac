import { plain, type Amount } from '../measure';
import type { Plan } from '../plan';
import { sections as shopSections } from '../reference';
import { say, type Formats } from '../words';
import { csv } from './csv';

const numberOf = (amount: Amount): string => plain(amount.amount.round(3));

/** The shopping list as a table for a spreadsheet: one row per ingredient, in walking order, numbers with a decimal point. */
export function shoppingCsv(plan: Plan, formats: Formats): string {
  const dishName = new Map(plan.menu.dishes.map((d) => [d.id, d.name]));
  const { lines, sections } = plan.buying;
  const place = (section: string): number => (sections.includes(section) ? sections.indexOf(section) : sections.length);
  const rows = lines.toSorted((a, b) => place(a.section) - place(b.section)).map((line) => [
    shopSections.find((s) => s.id === line.section)?.name ?? line.section, line.name, numberOf(line.need), numberOf(line.larder), numberOf(line.buy), line.need.unit,
    line.packs.map(({ count, size }) => `${count} × ${numberOf(size)} ${size.unit}`).join('; '),
    line.origins.map(({ dish }) => dishName.get(dish) ?? (dish === 'frying-oil' ? say(formats, 'report.fryingOil') : dish)).join('; '),
    line.cost ?? '',
  ]);
  return csv([[
    say(formats, 'report.csv.section'), say(formats, 'report.csv.ingredient'), say(formats, 'report.csv.need'), say(formats, 'report.csv.larder'), say(formats, 'report.csv.buy'),
    say(formats, 'report.csv.unit'), say(formats, 'report.csv.packs'), say(formats, 'report.csv.for'), say(formats, 'report.csv.cost'),
  ], ...rows]);
}
