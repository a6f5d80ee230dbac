import type { ReactElement } from 'react';
import type { Bowl } from '../../frying';
import { say } from '../../words';
import { linesWords, quantity } from '../amounts';
import { Hatch, TickBox } from '../paper/marks';
import type { SheetContext } from '../types';

/** When to finish a bowl of batter, and what goes into it. */
export function BowlRow({ bowl, columns, context: { formats: f, names } }: { readonly bowl: Bowl; readonly columns: number; readonly context: SheetContext }): ReactElement {
  const now = bowl.lines.filter((line) => line.perBowl);
  const ahead = bowl.lines.filter((line) => !line.perBowl);
  const when = { number: bowl.number, at: bowl.mixAt, useBy: bowl.useBy };
  return (
    <tr className="bowl">
      <td colSpan={columns}>
        <div className="line">
          <TickBox small />
          <strong>{now.length > 0 ? say(f, 'sheets.fry.bowl', when) : say(f, 'sheets.fry.bowlPlain', when)}</strong>
          <Hatch />
        </div>
        <p className="detail">
            <span>
              {say(f, 'sheets.fry.bowlDish', { dish: names.dish(bowl.dish), batter: quantity(f, bowl.batterKg, 'kg'), pieces: bowl.pieces })}
              {ahead.length > 0 && `; ${say(f, 'sheets.fry.bowlFrom', { lines: linesWords(f, names, ahead) })}`}{now.length > 0 && ';'}
            </span>
            {now.length > 0 && <strong> {say(f, 'sheets.fry.bowlNow', { lines: linesWords(f, names, now) })}</strong>}
        </p>
      </td>
    </tr>
  );
}
