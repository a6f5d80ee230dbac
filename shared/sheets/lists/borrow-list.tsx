import type { ReactElement } from 'react';
import { say } from '../../words';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';

/** What is borrowed: a box for "here", how many of what, from whom, a box for "returned". What has gone back is left out. Nothing when nothing is. */
export function BorrowList({ context: { plan, formats: f } }: { readonly context: SheetContext }): ReactElement | null {
  const open = plan.buying.borrowed.filter((b) => !b.returned);
  if (open.length === 0) return null;
  return (
    <table className="shopping borrow keep">
      <colgroup><col className="w3" /><col /><col className="w4" /><col className="w3" /></colgroup>
      <thead>
        <tr className="sectionrow"><th scope="rowgroup" colSpan={4}>{say(f, 'buying.section.borrow')}</th></tr>
        <tr>
          <th scope="col">{say(f, 'buying.lent.hereHead')}</th>
          <th scope="col">{say(f, 'sheets.shopping.what')}</th>
          <th scope="col">{say(f, 'buying.lent.fromHead')}</th>
          <th scope="col">{say(f, 'buying.lent.returnedHead')}</th>
        </tr>
      </thead>
      <tbody>
        {open.map((b) => (
          <tr key={b.id}>
            <td>{b.here ? say(f, 'buying.lent.here') : <TickBox small />}</td>
            <td><strong>{say(f, 'buying.lent.line', { count: b.count, name: b.name, from: '' })}</strong></td>
            <td>{b.from}</td>
            <td><TickBox small /></td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
