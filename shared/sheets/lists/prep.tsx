import type { ReactElement } from 'react';
import { minutesPerDay } from '../../measure';
import { say, type PlainWordId } from '../../words';
import { amountWords } from '../amounts';
import { shiftDay } from '../calendar';
import { byDay, clockInDay } from '../day/by-day';
import { rowWords } from '../day/row-words';
import { allWho } from '../day/task-words';
import { TickBox } from '../paper/marks';
import { boxCount, keptAmount } from '../labels/box-words';
import { keptThings } from '../labels/kept-things';
import { jobAmount } from '../labels/job-amount';
import { KeptTable } from '../labels/kept-table';
import { isChanged, Since, Was } from '../reprint';
import type { PrintedRow, Reprint, SheetContext, SheetDraft } from '../types';
import { CookingNotes } from './cooking-notes';
import { madeAhead, type AheadJob, type KeepingPlace } from './ahead';
import { Amounts, printedAmounts, Rounding } from './weigh';

const placeWords: Readonly<Record<KeepingPlace, PlainWordId>> = {
  counter: 'sheets.prep.place.counter', hot: 'sheets.prep.place.hot', cold: 'sheets.prep.place.cold', freezer: 'sheets.prep.place.freezer',
};

const keepsWords = ({ step }: AheadJob, f: SheetContext['formats']): string => {
  const keeps = step?.keeps;
  return keeps === undefined ? '' : say(f, 'sheets.prep.keeps', { place: say(f, placeWords[keeps.place]), for: keeps.minutes < 2880 ? f.duration(keeps.minutes) : f.figure(Math.floor(keeps.minutes / 1440), 'days') });
};

/** A job as it stands on paper. */
function printedJob(job: AheadJob, context: SheetContext): PrintedRow {
  const { formats: f } = context;
  const { row, task } = job;
  const { title, lines } = rowWords(row, false, context);
  const { amount, thing } = jobAmount(job, keptThings(context.plan));
  return {
    key: row.key, name: title,
    cells: {
      day: say(f, 'sheets.day.dayOf', { days: Math.floor(task.start / minutesPerDay) }), start: clockInDay(f, task.start), more: lines.join('; '),
      makes: thing !== null ? keptAmount(thing, f) : amount === null ? '' : amountWords(f, amount), boxes: thing === null ? '' : boxCount(thing, f), keeps: keepsWords(job, f), who: allWho(row.tasks, context),
    },
  };
}

function Job({ job, reprint, context }: { readonly job: AheadJob; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { title, lines } = rowWords(job.row, false, context);
  const row = printedJob(job, context);
  const { start, makes, boxes, keeps, who } = row.cells;
  const was = (cell: string): ReactElement => <Was reprint={reprint} row={row} cell={cell} />;
  return (
    <tr className={isChanged(reprint, row) ? 'changed' : undefined}>
      <td className="tickcell"><TickBox /></td>
      <td className="mid strong start"><span className="nowrap">{start}</span>{was('start')}</td>
      <td><strong>{title}</strong>{lines.map((line) => <p key={line} className="small">{line}</p>)}{was('more')}</td>
      <td className="makes"><span className="nowrap">{makes}</span>{was('makes')}{boxes !== '' && <p className="small nowrap">{boxes}{was('boxes')}</p>}</td>
      <td className="small">{keeps}{was('keeps')}</td>
      <td className="small">{who}{was('who')}</td>
    </tr>
  );
}

function Jobs({ jobs, reprint, context }: { readonly jobs: readonly AheadJob[]; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { formats: f } = context;
  return (
    <table className="prep">
      <thead>
        <tr>
          <th scope="col">{say(f, 'sheets.tick')}</th>
          <th scope="col">{say(f, 'sheets.prep.time')}</th>
          <th scope="col">{say(f, 'sheets.prep.what')}</th>
          <th scope="col">{say(f, 'sheets.prep.makes')}</th>
          <th scope="col">{say(f, 'sheets.prep.kept')}</th>
          <th scope="col">{say(f, 'sheets.prep.who')}</th>
        </tr>
      </thead>
      <tbody>{jobs.map((job) => <Job key={job.row.key} job={job} reprint={reprint} context={context} />)}</tbody>
    </table>
  );
}

/** The make-ahead list: jobs with the recipes before the doors open (all of them when no guests come), by day; then the amounts of each dish they belong to. Not made when nothing is made ahead. */
export function prepDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const ahead = madeAhead(plan);
  if (ahead.length === 0) return [];
  const dishes = plan.menu.dishes.filter((d) => ahead.some(({ row }) => row.tasks.some((t) => t.dish === d.id)));
  const rows = [...ahead.map((job) => printedJob(job, context)), ...dishes.flatMap((dish) => printedAmounts(dish, context))];
  const reprint = context.reprintOf?.('prep') ?? null;
  const content = (
    <>
      <Since reprint={reprint} rows={rows} formats={f} />
      {byDay(ahead.map((job) => ({ job, start: job.row.start }))).map((d) => (
        <section key={d.day}>
          <h2>{f.date(shiftDay(plan.event.day, d.day))}</h2>
          <Jobs jobs={d.rows.map(({ job }) => job)} reprint={reprint} context={context} />
        </section>
      ))}
      <KeptTable context={context} />
      <CookingNotes context={context} />
      <h2>{say(f, 'sheets.prep.weigh')}</h2>
      <Rounding context={context} />
      {dishes.map((dish) => <Amounts key={dish.id} dish={dish} reprint={reprint} context={context} />)}
    </>
  );
  return [{ kind: 'prep', id: 'prep', title: say(f, 'sheets.kind.prep'), note: '', rows, content }];
}
