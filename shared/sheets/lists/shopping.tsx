import type { ReactElement } from 'react';
import { listFor, wholeNeed, type WalkingList } from '../../buying';
import { say } from '../../words';
import { amountWords } from '../amounts';
import type { PrintedRow, Reprint, SheetContext, SheetDraft } from '../types';
import { BorrowList } from './borrow-list';
import { Since } from '../reprint';
import { printedLine, SectionRows } from './shopping-rows';

function ListTable({ list, shared, reprint, context }: { readonly list: WalkingList; readonly shared: boolean; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { formats: f, names } = context;
  const costs = [...list.sections.flatMap((s) => s.lines), ...list.later].some((line) => line.cost !== undefined);
  return (
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
      {list.sections.map(({ section, lines }) => <SectionRows key={section} title={names.section(section)} lines={lines} costs={costs} shared={shared} reprint={reprint} context={context} />)}
      {list.later.length > 0 && <SectionRows title={say(f, 'buying.section.later')} lines={list.later} costs={costs} shared={shared} reprint={reprint} context={context} />}
    </table>
  );
}

/** What stands under the whole list: the cost with what it leaves out, what is bought, what the house has of its own, what the table does not know. */
function Under({ context }: { readonly context: SheetContext }): ReactElement {
  const { plan: { buying, drinks }, formats: f, names } = context;
  const bought = buying.lines.filter((l) => l.state === 'bought');
  return (
    <div className="cautions">
      {buying.cost !== null && <p><strong>{say(f, 'buying.total', { cost: buying.cost, unpriced: buying.unpriced })}</strong></p>}
      {bought.length > 0 && <p>{say(f, 'buying.sheet.bought', { names: bought.map((l) => l.name) })}</p>}
      {buying.ownThings.length > 0 && <p>{say(f, 'buying.sheet.own', { things: buying.ownThings.map((o) => `${o.name} ${amountWords(f, wholeNeed(o))}`) })}</p>}
      {drinks.unbrewed.map((d) => <p key={d.drink}>{say(f, 'buying.sheet.unbrewed', { drink: names.dish(d.drink), litres: d.litres })}</p>)}
      {buying.unknown.map((u) => <p key={u.ingredient}>{say(f, 'sheets.shopping.unknown', { ingredient: names.ingredient(u.ingredient), dishes: f.list(u.dishes.map(names.dish)) })}</p>)}
    </div>
  );
}

/** A list as table with, on a reprint, what changed since; and its rows for the next print. */
function listed(list: WalkingList, id: string, shared: boolean, context: SheetContext): Pick<SheetDraft, 'content'> & { readonly rows: readonly PrintedRow[] } {
  const rows = [...list.sections.flatMap((s) => s.lines), ...list.later].map((line) => printedLine(line, context));
  const reprint = context.reprintOf?.(id) ?? null;
  return { rows, content: <><Since reprint={reprint} rows={rows} formats={context.formats} /><ListTable list={list} shared={shared} reprint={reprint} context={context} /></> };
}

const isEmpty = (list: WalkingList): boolean => list.sections.length === 0 && list.later.length === 0;
const plainLetters = (name: string): string => name.normalize('NFKD').replaceAll(/[^A-Za-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '').toLowerCase();

/** A page for each shopper, when the list is split: their lines only. Its id holds to the name, and to the place where names are written alike. */
function shopperDrafts(context: SheetContext): SheetDraft[] {
  const { plan: { buying }, formats: f } = context;
  const used = new Set<string>();
  return buying.shoppers.flatMap((who, i) => {
    const list = listFor(buying, who);
    if (isEmpty(list)) return [];
    const name = plainLetters(who);
    const id = `shopping-${name === '' || used.has(name) ? `${name}${i + 1}` : name}`;
    used.add(name);
    return [{ kind: 'shopping', id, title: say(f, 'sheets.titled', { title: say(f, 'sheets.kind.shopping'), of: who }), note: '', ...listed(list, id, false, context) }];
  });
}

/**
 * The shopping list by section, in walking order, with what is left for later and what is borrowed; then a page for each shopper. What need not
 * be bought is left out. Not made when nothing is to be bought or borrowed.
 */
export function shoppingDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan: { buying }, formats: f } = context;
  const list = listFor(buying);
  if (isEmpty(list) && !buying.borrowed.some((b) => !b.returned)) return [];
  const table = listed(list, 'shopping', true, context);
  const content = (
    <>
      {!isEmpty(list) && table.content}
      <BorrowList context={context} />
      <Under context={context} />
    </>
  );
  return [{ kind: 'shopping', id: 'shopping', title: say(f, 'sheets.kind.shopping'), note: '', rows: table.rows, content }, ...shopperDrafts(context)];
}
