import type { ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';
import { clockInDay } from './by-day';
import { mustNotSlip } from './must-not-slip';
import { rowWords } from './row-words';
import type { DayRow } from './rows';
import { allWho, withWords } from './task-words';

interface Props {
  readonly row: DayRow;
  /** The plan on the wall names who does it; a helper's own page has larger type instead. */
  readonly wall: boolean;
  readonly hour: boolean;
  readonly context: SheetContext;
}

/** Why jobs of a row do not fit as planned. */
function Late({ row, context: { plan, formats: f } }: Pick<Props, 'row' | 'context'>): ReactElement {
  const late = plan.day.overloads.filter((o) => row.tasks.some((t) => t.id === o.task));
  return <>{late.map((o) => <p key={o.task} className="small strong">{o.lateMinutes > 0 && `${say(f, 'sheets.day.late', { minutes: o.lateMinutes })}. `}{sayMessage(f, o.message)}</p>)}</>;
}

/** One row: when, until when, what, who, with what. A bar at the left edge marks what must not slip. */
export function DayRowView({ row, wall, hour, context }: Props): ReactElement {
  const { formats: f } = context;
  const { title, lines } = rowWords(row, wall, context);
  // On the wall, pans and pots of a stretch or round are left to the fry and drinks sheets.
  const things = wall && row.kind !== 'job' ? '' : withWords(row.tasks, context);
  const where = [...new Set(row.tasks.flatMap((t) => t.station ?? []))].map(context.names.thing).join(', ');
  const until = row.kind === 'job' ? row.tasks[0]?.end ?? row.end : row.end;
  return (
    <tr className={`${row.tasks.some(mustNotSlip) ? 'bar' : ''}${hour ? ' hour' : ''}`}>
      <td className="tickcell"><TickBox small={wall} /></td>
      <td className="mid strong nowrap">{clockInDay(f, row.start)}</td>
      <td className="nowrap">{clockInDay(f, until)}</td>
      <td>
        {wall ? title : <strong>{title}</strong>}
        {wall && things !== '' && <span className="grey"> ({things})</span>}
        {lines.map((line) => <p key={line} className="small">{line}</p>)}
        <Late row={row} context={context} />
      </td>
      {wall ? <td>{allWho(row.tasks, context)}</td> : <td className="small">{[where, things].filter((x) => x !== '').join(', ')}</td>}
    </tr>
  );
}

const hourOf = (row: DayRow | undefined): number => Math.floor((row?.start ?? 0) / 60);

/** A table of rows in order of time; the first row of each clock hour has a heavier line above. */
export function DayTable({ rows, wall, context }: { readonly rows: readonly DayRow[]; readonly wall: boolean; readonly context: SheetContext }): ReactElement {
  const { formats: f, plan } = context;
  const clock = plan.event.preferences.clock === '12' ? ' clock12' : '';
  return (
    <table className={`tasks${wall ? ' close' : ''}${clock}`}>
      <thead>
        <tr>
          <th scope="col" className="t0">{say(f, 'sheets.tick')}</th>
          <th scope="col" className="t1">{say(f, 'sheets.day.time')}</th>
          <th scope="col" className="t2">{say(f, 'sheets.day.until')}</th>
          <th scope="col">{say(f, 'sheets.day.what')}</th>
          {wall ? <th scope="col" className="t3">{say(f, 'sheets.day.who')}</th> : <th scope="col" className="t4">{say(f, 'sheets.day.with')}</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, at) => <DayRowView key={row.key} row={row} wall={wall} hour={at > 0 && hourOf(rows[at - 1]) !== hourOf(row)} context={context} />)}
      </tbody>
    </table>
  );
}
