import type { ReactElement } from 'react';
import type { Batch } from '../../frying';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';

interface Props {
  readonly batch: Batch;
  readonly hour: boolean;
  /** The station has more than one pan, or more than one dish: name it in the row. */
  readonly showPan: boolean;
  readonly showDish: boolean;
  readonly context: SheetContext;
}

/** One batch: read from a metre away, ticked with a thick pen. */
export function BatchRow({ batch, hour, showPan, showDish, context: { formats: f, names } }: Props): ReactElement {
  return (
    <tr className={hour ? 'tall hour' : 'tall'}>
      <td className="tickcell"><TickBox /></td>
      <td className="big">{f.number(batch.number)}</td>
      <td className="big">{f.clock(batch.dropAt)}</td>
      <td className="mid nowrap">{f.clock(batch.liftAt)}</td>
      <td className="big">{f.number(batch.pieces)}</td>
      {showPan && <td>{names.thing(batch.pan)}</td>}
      <td>{showDish && <strong>{names.dish(batch.dish)}<br /></strong>}{names.wave(batch.wave)}</td>
      <td className="mid nowrap">{f.clock(batch.eatBy)}</td>
    </tr>
  );
}
