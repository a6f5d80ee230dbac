import type { ReactElement } from 'react';
import type { DishPlan, ScaledLine } from '../../menu';
import { say, type PlainWordId } from '../../words';
import { amountWords, linesWords, measureWords } from '../amounts';
import { shiftDay } from '../calendar';
import { byDay, clockInDay } from '../day/by-day';
import { rowWords } from '../day/row-words';
import { allWho } from '../day/task-words';
import { foodTitle } from '../food-name';
import { TickBox } from '../paper/marks';
import { boxCount } from '../labels/box-words';
import { keptThings } from '../labels/kept-things';
import { jobAmount } from '../labels/job-amount';
import { KeptTable } from '../labels/kept-table';
import type { SheetContext, SheetDraft } from '../types';
import { madeAhead, type AheadJob, type KeepingPlace } from './ahead';

const placeWords: Readonly<Record<KeepingPlace, PlainWordId>> = {
  counter: 'sheets.prep.place.counter', hot: 'sheets.prep.place.hot', cold: 'sheets.prep.place.cold', freezer: 'sheets.prep.place.freezer',
};

function Job({ job: { row, task, dish, step }, context }: { readonly job: AheadJob; readonly context: SheetContext }): ReactElement {
  const { formats: f } = context;
  const { title, lines } = rowWords(row, false, context);
  const keeps = step?.keeps;
  const { amount, thing } = jobAmount({ row, task, dish, step }, keptThings(context.plan));
  return (
    <tr>
      <td className="tickcell"><TickBox /></td>
      <td className="mid strong nowrap">{clockInDay(f, task.start)}</td>
      <td><strong>{title}</strong>{lines.map((line) => <p key={line} className="small">{line}</p>)}</td>
      <td className="nowrap">{amount === null ? '' : amountWords(f, amount)}{thing !== null && <p className="small">{boxCount(thing, f)}</p>}</td>
      <td className="small">{keeps === undefined ? '' : say(f, 'sheets.prep.keeps', { place: say(f, placeWords[keeps.place]), for: keeps.minutes < 2880 ? f.duration(keeps.minutes) : f.figure(Math.floor(keeps.minutes / 1440), 'days') })}</td>
      <td className="small">{allWho(row.tasks, context)}</td>
    </tr>
  );
}

function Jobs({ jobs, context }: { readonly jobs: readonly AheadJob[]; readonly context: SheetContext }): ReactElement {
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
      <tbody>{jobs.map((job) => <Job key={job.row.key} job={job} context={context} />)}</tbody>
    </table>
  );
}

function lineText(line: ScaledLine, { formats: f, names }: SheetContext): string {
  const extras = [...(line.preparation === undefined ? [] : [line.preparation]), ...(line.toTaste ? [say(f, 'sheets.prep.toTaste')] : [])];
  return [foodTitle(names.ingredient(line.ingredient)), ...extras].join(', ');
}

function Amounts({ dish, context }: { readonly dish: DishPlan; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f, names } = context;
  const later = dish.lines.filter((line) => line.perBowl);
  const bowls = plan.frying.bowls.filter((b) => b.dish === dish.id).length;
  return (
    <section className="dish">
      <h3>{say(f, 'sheets.prep.weighFor', { dish: dish.name, total: amountWords(f, dish.total) })}</h3>
      <ul className="lines">
        {dish.lines.filter((line) => !line.perBowl).map((line) => (
          <li key={`${line.ingredient}-${line.preparation ?? ''}`}><span>{lineText(line, context)}</span><strong className="nowrap">{measureWords(f, line)}</strong></li>
        ))}
      </ul>
      {later.length > 0 && <p className="small">{say(f, 'sheets.prep.perBowl', { lines: linesWords(f, names, later), bowls })}</p>}
    </section>
  );
}

/** The make-ahead list: jobs with the recipes before the doors open (all of them when no guests come), by day; then the amounts of each dish they belong to. Not made when nothing is made ahead. */
export function prepDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const ahead = madeAhead(plan);
  if (ahead.length === 0) return [];
  const dishes = plan.menu.dishes.filter((d) => ahead.some(({ row }) => row.tasks.some((t) => t.dish === d.id)));
  const content = (
    <>
      {byDay(ahead.map((job) => ({ job, start: job.row.start }))).map((d) => (
        <section key={d.day}>
          <h2>{f.date(shiftDay(plan.event.day, d.day))}</h2>
          <Jobs jobs={d.rows.map(({ job }) => job)} context={context} />
        </section>
      ))}
      <KeptTable context={context} />
      <h2>{say(f, 'sheets.prep.weigh')}</h2>
      {dishes.map((dish) => <Amounts key={dish.id} dish={dish} context={context} />)}
    </>
  );
  return [{ kind: 'prep', id: 'prep', title: say(f, 'sheets.kind.prep'), note: '', content }];
}
