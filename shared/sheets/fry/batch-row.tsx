import type { ReactElement } from 'react';
import type { Batch } from '../../frying';
import { say } from '../../words';
import { TickBox } from '../paper/marks';
import { isChanged, Was } from '../reprint';
import type { PrintedRow, Reprint, SheetContext } from '../types';

interface Props {
  readonly batch: Batch;
  readonly hour: boolean;
  /** The station has more than one pan, or more than one dish: name it in the row. */
  readonly showPan: boolean;
  readonly showDish: boolean;
  readonly reprint: Reprint | null;
  readonly context: SheetContext;
}

/** A batch as it stands on paper. Batches are told apart by dish and place among its batches, as another dish between them is no change to it. */
export function printedBatch(batch: Batch, { plan, formats: f, names }: SheetContext): PrintedRow {
  const nth = plan.frying.batches.filter((b) => b.station === batch.station && b.dish === batch.dish && b.number <= batch.number).length;
  return {
    key: `${batch.dish}/${nth}`, name: say(f, 'sheets.fry.batchOf', { n: batch.number }),
    cells: { putIn: f.clock(batch.dropAt), liftOut: f.clock(batch.liftAt), pieces: f.number(batch.pieces), pan: names.thing(batch.pan), eatBy: f.clock(batch.eatBy) },
  };
}

/** One batch: read from a metre away, ticked with a thick pen. */
export function BatchRow({ batch, hour, showPan, showDish, reprint, context }: Props): ReactElement {
  const { formats: f, names } = context;
  const row = printedBatch(batch, context);
  const text = (cell: string): ReactElement => <>{row.cells[cell]}<Was reprint={reprint} row={row} cell={cell} /></>;
  return (
    <tr className={`tall${hour ? ' hour' : ''}${isChanged(reprint, row) ? ' changed' : ''}`}>
      <td className="tickcell"><TickBox /></td>
      <td className="big">{f.number(batch.number)}</td>
      <td className="big">{text('putIn')}</td>
      <td className="mid nowrap">{text('liftOut')}</td>
      <td className="big">{text('pieces')}</td>
      {showPan && <td>{text('pan')}</td>}
      <td>{showDish && <strong>{names.dish(batch.dish)}<br /></strong>}{names.wave(batch.wave)}</td>
      <td className="mid nowrap">{text('eatBy')}</td>
    </tr>
  );
}
