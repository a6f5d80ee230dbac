import type { ReactElement } from 'react';
import { wholeNeed, type ShoppingLine } from '../../buying';
import { settle } from '../../household';
import { amountOf, amountText } from '../../measure';
import { say, sayMessage } from '../../words';
import { shiftDay } from '../calendar';
import { TickBox } from '../paper/marks';
import { isChanged, Was } from '../reprint';
import type { PrintedRow, Reprint, SheetContext } from '../types';

/** Packs by number and size; nothing for one single pack, which says the same as the amount. */
function packsOf(line: ShoppingLine, { formats: f }: SheetContext): string {
  if (line.packs.length === 1 && line.packs[0]?.count === 1) return '';
  return line.packs.map((pack) => say(f, 'sheets.shopping.packs', { count: pack.count, size: f.amountOf(amountText(pack.size), line.ingredient) }).replaceAll(' ', '\u00a0')).join(' + ');
}

/** The day of the second trip, `YYYY-MM-DD`, when it buys this line: what does not keep as long as the first trip is early. */
function freshDay(line: ShoppingLine, { plan }: SheetContext): string | null {
  const trip = plan.day.tasks.find((t) => t.id === 'shop/fresh');
  const keeps = settle(plan.event, 'day.keepsDays').value;
  return trip === undefined || line.keepsDays === null || line.keepsDays >= keeps ? null : shiftDay(plan.event.day, Math.floor(trip.start / 1440));
}

/** When it is to be bought: the day the cook set, the second trip, or not before it would spoil. */
function whenWords(line: ShoppingLine, context: SheetContext): string[] {
  const { plan, formats: f } = context;
  if (line.when !== null) return [say(f, 'buying.sheet.on', { day: f.date(line.when) })];
  const fresh = freshDay(line, context);
  if (fresh !== null) return [say(f, 'sheets.shopping.fresh', { day: f.date(fresh) })];
  return line.keepsDays !== null && line.keepsDays <= 14 ? [say(f, 'sheets.shopping.notBefore', { day: f.date(shiftDay(plan.event.day, -line.keepsDays)) })] : [];
}

/** When, what stands in the house, what is bought of it, and who buys it where the list is everybody's. */
function remarks(line: ShoppingLine, shared: boolean, context: SheetContext): string {
  const { formats: f } = context;
  return [
    ...whenWords(line, context),
    ...(line.larder.amount.gt(0) ? [say(f, 'sheets.shopping.house', { amount: f.amountOf(amountText(line.larder), line.ingredient) })] : []),
    ...(line.reserve === undefined ? [] : [say(f, 'buying.reserve', { amount: amountText(amountOf(line.reserve.value, line.need.unit)) })]),
    ...(line.note === null ? [] : [sayMessage(f, line.note).replace(/\.$/, '')]),
    ...(line.optional ? [say(f, 'sheets.shopping.optional')] : []),
    ...(shared && line.shopper !== null ? [say(f, 'buying.sheet.who', { who: line.shopper })] : []),
  ].join('; ');
}

/** Dishes named in a row, those that use most first; the rest are counted. */
const mostNamed = 3;

function usesOf(line: ShoppingLine, { formats: f, names }: SheetContext): string {
  const dishes = [...new Set(line.origins.toSorted((a, b) => b.amount.amount.cmp(a.amount.amount)).map((o) => names.dish(o.dish)))];
  return f.list(dishes.length > mostNamed + 1 ? [...dishes.slice(0, mostNamed), say(f, 'sheets.shopping.moreDishes', { n: dishes.length - mostNamed })] : dishes);
}

/** A line as it stands on paper: what is to be bought of it. */
export const printedLine = (line: ShoppingLine, { formats: f }: SheetContext): PrintedRow => ({ key: line.key, name: line.name, cells: { buy: f.amountOf(amountText(line.buy), line.ingredient) } });

interface RowsProps {
  readonly costs: boolean;
  /** The list of everybody: it says who buys what. */
  readonly shared: boolean;
  readonly reprint: Reprint | null;
  readonly context: SheetContext;
}

function Line({ line, costs, shared, reprint, context }: RowsProps & { readonly line: ShoppingLine }): ReactElement {
  const { formats: f } = context;
  const packs = packsOf(line, context);
  const remark = remarks(line, shared, context);
  const row = printedLine(line, context);
  return (
    <tr className={isChanged(reprint, row) ? 'changed' : undefined}>
      <td className="tickcell"><TickBox small /></td>
      <td className="n"><strong>{row.cells['buy']}</strong><Was reprint={reprint} row={row} cell="buy" />{packs !== '' && <><br /><span className="small">{packs}</span></>}</td>
      <td><strong>{line.name}</strong>{remark !== '' && <><br /><span className="small">{remark}</span></>}</td>
      <td className="n small nowrap">{f.amountOf(amountText(wholeNeed(line)), line.ingredient)}</td>
      <td className="small">{usesOf(line, context)}</td>
      {costs && <td className="n small nowrap">{line.cost === undefined ? '' : f.money(line.cost)}</td>}
    </tr>
  );
}

/** The lines of one section under its name; the name stays with the first line. */
export function SectionRows({ title, lines, ...rest }: RowsProps & { readonly title: string; readonly lines: readonly ShoppingLine[] }): ReactElement {
  const [first, ...more] = lines;
  // One shopper of a whole section stands at its head, not at every line.
  const who = rest.shared && first !== undefined && lines.every((l) => l.shopper === first.shopper) ? first.shopper : null;
  const row = { ...rest, shared: rest.shared && who === null };
  return (
    <>
      <tbody className="keep">
        <tr className="sectionrow"><th scope="rowgroup" colSpan={rest.costs ? 6 : 5}>{who === null ? title : say(rest.context.formats, 'sheets.titled', { title, of: who })}</th></tr>
        {first !== undefined && <Line line={first} {...row} />}
      </tbody>
      <tbody>{more.map((line) => <Line key={line.key} line={line} {...row} />)}</tbody>
    </>
  );
}
