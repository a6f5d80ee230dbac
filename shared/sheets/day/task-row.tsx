import { Fragment, type ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import { TickBox } from '../paper/marks';
import { isChanged, oldText, Was } from '../reprint';
import type { Reprint, SheetContext } from '../types';
import { clockInDay } from './by-day';
import { mustNotSlip } from './must-not-slip';
import { untilOf, withOf, type PrintedDayRow } from './printed';
import type { DayRow } from './rows';

interface Props {
  readonly row: DayRow;
  readonly printed: PrintedDayRow;
  readonly reprint: Reprint | null;
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

/** The lines under the name of a row; on a reprint each time that is another one has the old in brackets. */
function Lines({ printed: { words, row, entries }, reprint }: Pick<Props, 'printed' | 'reprint'>): ReactElement {
  const [only] = words.lines;
  if (entries.length > 0 && only !== undefined && entries.some((e) => isChanged(reprint, e))) {
    const before = only.slice(0, only.indexOf(entries[0]?.cells['entry'] ?? only));
    return <p className="small">{before}{entries.map((e, at) => <Fragment key={e.key}>{at > 0 && ', '}{e.cells['entry']}<Was reprint={reprint} row={e} cell="entry" /></Fragment>)}</p>;
  }
  const was = oldText(reprint, row, 'more');
  return <>{words.lines.map((line) => <p key={line} className="small">{line}</p>)}{was !== null && was !== '' && <p className="small before wrap">({was})</p>}</>;
}

/** One row: when, until when, what, who, with what. A frame round the time marks what must not slip; on a reprint a bar at the edge marks what changed. */
export function DayRowView({ row, printed, reprint, wall, hour, context }: Props): ReactElement {
  const { words, row: own, entries } = printed;
  const changed = [own, ...entries].some((r) => isChanged(reprint, r));
  const was = (cell: string): ReactElement => <Was reprint={reprint} row={own} cell={cell} />;
  const things = withOf(row, wall, context);
  return (
    <tr className={[...(row.tasks.some(mustNotSlip) ? ['noslip'] : []), ...(changed ? ['changed'] : []), ...(hour ? ['hour'] : [])].join(' ')}>
      <td className="tickcell"><TickBox small={wall} /></td>
      <td className="mid strong start"><span className="nowrap">{clockInDay(context.formats, row.start)}</span>{was('start')}</td>
      <td className="until"><span className="nowrap">{clockInDay(context.formats, untilOf(row))}</span>{was('until')}</td>
      <td>
        {wall ? words.title : <strong>{words.title}</strong>}
        {wall && things !== '' && <span className="grey"> ({things})</span>}
        <Lines printed={printed} reprint={reprint} />
        <Late row={row} context={context} />
      </td>
      {wall ? <td>{own.cells['who']}{was('who')}</td> : <td className="small">{things}{was('with')}</td>}
    </tr>
  );
}

const hourOf = (row: DayRow | undefined): number => Math.floor((row?.start ?? 0) / 60);

/** A table of rows in order of time; the first row of each clock hour has a heavier line above. */
export function DayTable({ rows, reprint, wall, context }: { readonly rows: readonly { readonly row: DayRow; readonly printed: PrintedDayRow }[]; readonly reprint: Reprint | null; readonly wall: boolean; readonly context: SheetContext }): ReactElement {
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
        {rows.map(({ row, printed }, at) => <DayRowView key={row.key} row={row} printed={printed} reprint={reprint} wall={wall} hour={at > 0 && hourOf(rows[at - 1]?.row) !== hourOf(row)} context={context} />)}
      </tbody>
    </table>
  );
}
