import type { ReactElement } from 'react';
import { wholeNeed, type ShoppingLine } from '../../buying';
import { settle } from '../../household';
import { say } from '../../words';
import { amountWords } from '../amounts';
import { shiftDay } from '../calendar';
import { TickBox } from '../paper/marks';
import type { SheetContext, SheetDraft } from '../types';

/** Packs by number and size; nothing for one single pack, which says the same as the amount. */
function packsOf(line: ShoppingLine, { formats: f }: SheetContext): string {
  if (line.packs.length === 1 && line.packs[0]?.count === 1) return '';
  return line.packs.map((pack) => say(f, 'sheets.shopping.packs', { count: pack.count, size: amountWords(f, pack.size) }).replaceAll(' ', '\u00a0')).join(' + ');
}

/** The day of the second trip, `YYYY-MM-DD`, when it buys this line: what does not keep as long as the first trip is early. */
function freshDay(line: ShoppingLine, { plan }: SheetContext): string | null {
  const trip = plan.day.tasks.find((t) => t.id === 'shop/fresh');
  const keeps = settle(plan.event, 'day.keepsDays').value;
  return trip === undefined || line.keepsDays === null || line.keepsDays >= keeps ? null : shiftDay(plan.event.day, Math.floor(trip.start / 1440));
}

/** When it is to be bought, and what stands in the house already. */
function remarks(line: ShoppingLine, context: SheetContext): string {
  const { plan, formats: f } = context;
  const parts: string[] = [];
  const fresh = freshDay(line, context);
  if (fresh !== null) parts.push(say(f, 'sheets.shopping.fresh', { day: f.date(fresh) }));
  else if (line.keepsDays !== null && line.keepsDays <= 14) parts.push(say(f, 'sheets.shopping.notBefore', { day: f.date(shiftDay(plan.event.day, -line.keepsDays)) }));
  if (line.larder.amount.gt(0)) parts.push(say(f, 'sheets.shopping.house', { amount: amountWords(f, line.larder) }));
  if (line.optional) parts.push(say(f, 'sheets.shopping.optional'));
  return parts.join('; ');
}

/** Dishes named in a row, those that use most first; the rest are counted. */
const mostNamed = 3;

function Line({ line, costs, context }: { readonly line: ShoppingLine; readonly costs: boolean; readonly context: SheetContext }): ReactElement {
  const { formats: f, names } = context;
  const dishes = [...new Set(line.origins.toSorted((a, b) => b.amount.amount.cmp(a.amount.amount)).map((o) => names.dish(o.dish)))];
  const packs = packsOf(line, context);
  const remark = remarks(line, context);
  return (
    <tr>
      <td className="tickcell"><TickBox small /></td>
      <td className="n"><strong>{amountWords(f, line.buy)}</strong>{packs !== '' && <><br /><span className="small">{packs}</span></>}</td>
      <td><strong>{line.name}</strong>{remark !== '' && <><br /><span className="small">{remark}</span></>}</td>
      <td className="n small">{amountWords(f, wholeNeed(line))}</td>
      <td className="small">{f.list(dishes.length > mostNamed + 1 ? [...dishes.slice(0, mostNamed), say(f, 'sheets.shopping.moreDishes', { n: dishes.length - mostNamed })] : dishes)}</td>
      {costs && <td className="n small">{line.cost === undefined ? '' : f.money(line.cost)}</td>}
    </tr>
  );
}

function Section({ section, lines, costs, context }: { readonly section: string; readonly lines: readonly ShoppingLine[]; readonly costs: boolean; readonly context: SheetContext }): ReactElement {
  const [first, ...rest] = lines;
  return (
    <>
      <tbody className="keep">
        <tr className="sectionrow"><th scope="rowgroup" colSpan={costs ? 6 : 5}>{context.names.section(section)}</th></tr>
        {first !== undefined && <Line line={first} costs={costs} context={context} />}
      </tbody>
      <tbody>{rest.map((line) => <Line key={line.ingredient} line={line} costs={costs} context={context} />)}</tbody>
    </>
  );
}

/** The shopping list by section, in walking order. What need not be bought is left out. Not made when nothing is to be bought. */
export function shoppingDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan: { buying }, formats: f, names } = context;
  const lines = buying.lines.filter((line) => line.buy.amount.gt(0));
  if (lines.length === 0) return [];
  const costs = lines.some((line) => line.cost !== undefined);
  const content = (
    <>
      <table className="shopping">
        <thead>
          <tr>
            <th scope="col" className="w1">{say(f, 'sheets.tick')}</th>
            <th scope="col" className="n w2">{say(f, 'sheets.shopping.buy')}</th>
            <th scope="col">{say(f, 'sheets.shopping.what')}</th>
            <th scope="col" className="n w3">{say(f, 'sheets.shopping.need')}</th>
            <th scope="col" className="w4">{say(f, 'sheets.shopping.for')}</th>
            {costs && <th scope="col" className="n w5">{say(f, 'sheets.shopping.cost')}</th>}
          </tr>
        </thead>
        {buying.sections.map((section) => {
          const own = lines.filter((line) => line.section === section);
          return own.length === 0 ? null : <Section key={section} section={section} lines={own} costs={costs} context={context} />;
        })}
      </table>
      <div className="cautions">
        {buying.cost !== null && <p><strong>{say(f, 'sheets.shopping.total', { cost: f.money(buying.cost) })}</strong></p>}
        {buying.unknown.map((u) => <p key={u.ingredient}>{say(f, 'sheets.shopping.unknown', { ingredient: names.ingredient(u.ingredient), dishes: f.list(u.dishes.map(names.dish)) })}</p>)}
      </div>
    </>
  );
  return [{ kind: 'shopping', id: 'shopping', title: say(f, 'sheets.kind.shopping'), note: '', content }];
}
