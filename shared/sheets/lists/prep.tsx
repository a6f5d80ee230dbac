import type { ReactElement } from 'react';
import type { Step } from '../../event';
import type { DishPlan, ScaledLine } from '../../menu';
import type { Task } from '../../timeline';
import { say, type PlainWordId } from '../../words';
import { amountWords, linesWords } from '../amounts';
import { shiftDay } from '../calendar';
import { byDay, clockInDay } from '../day/by-day';
import { rowWords } from '../day/row-words';
import { dayRows, type DayRow } from '../day/rows';
import { allWho } from '../day/task-words';
import { foodTitle } from '../food-name';
import { TickBox } from '../paper/marks';
import type { SheetContext, SheetDraft } from '../types';

type Place = NonNullable<Step['keeps']>['place'];
const placeWords: Readonly<Record<Place, PlainWordId>> = {
  counter: 'sheets.prep.place.counter', hot: 'sheets.prep.place.hot', cold: 'sheets.prep.place.cold', freezer: 'sheets.prep.place.freezer',
};

/** The recipe step a task stands for: the one whose id is a whole part of the task's id. */
function stepOf(task: Task, dish: DishPlan | undefined): Step | undefined {
  const parts = task.id.split(/[.:/]/);
  return dish?.recipe.steps.find((step) => parts.includes(step.id));
}

function Job({ row, context }: { readonly row: DayRow; readonly context: SheetContext }): ReactElement | null {
  const { plan, formats: f } = context;
  const [task] = row.tasks;
  if (task === undefined) return null;
  const { title, lines } = rowWords(row, false, context);
  const dish = plan.menu.dishes.find((d) => d.id === task.dish);
  const keeps = stepOf(task, dish)?.keeps;
  return (
    <tr>
      <td className="tickcell"><TickBox /></td>
      <td className="mid strong nowrap">{clockInDay(f, task.start)}</td>
      <td><strong>{title}</strong>{lines.map((line) => <p key={line} className="small">{line}</p>)}</td>
      <td className="nowrap">{dish === undefined ? '' : amountWords(f, dish.total)}</td>
      <td className="small">{keeps === undefined ? '' : say(f, 'sheets.prep.keeps', { place: say(f, placeWords[keeps.place]), for: keeps.minutes < 2880 ? f.duration(keeps.minutes) : f.figure(Math.floor(keeps.minutes / 1440), 'days') })}</td>
      <td className="small">{allWho(row.tasks, context)}</td>
    </tr>
  );
}

function Jobs({ rows, context }: { readonly rows: readonly DayRow[]; readonly context: SheetContext }): ReactElement {
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
      <tbody>{rows.map((row) => <Job key={row.key} row={row} context={context} />)}</tbody>
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
          <li key={`${line.ingredient}-${line.preparation ?? ''}`}><span>{lineText(line, context)}</span><strong className="nowrap">{amountWords(f, line.amount)}</strong></li>
        ))}
      </ul>
      {later.length > 0 && <p className="small">{say(f, 'sheets.prep.perBowl', { lines: linesWords(f, names, later), bowls })}</p>}
    </section>
  );
}

/** The make-ahead list: jobs with the recipes before the doors open (all of them when no guests come), by day; then the amounts of each dish they belong to. Not made when nothing is made ahead. */
export function prepDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  // A day of cooking for the household has no doors to open: all of it is made ahead.
  const household = plan.guests.adults.value + plan.guests.children.value === 0;
  const ahead = plan.day.tasks.filter((t) => t.kind === 'step' && (household || t.start < plan.event.opensAt));
  if (ahead.length === 0) return [];
  const dishes = plan.menu.dishes.filter((d) => ahead.some((t) => t.dish === d.id));
  const content = (
    <>
      {byDay(dayRows(ahead, plan.frying, 'own')).map((d) => (
        <section key={d.day}>
          <h2>{f.date(shiftDay(plan.event.day, d.day))}</h2>
          <Jobs rows={d.rows} context={context} />
        </section>
      ))}
      <h2>{say(f, 'sheets.prep.weigh')}</h2>
      {dishes.map((dish) => <Amounts key={dish.id} dish={dish} context={context} />)}
    </>
  );
  return [{ kind: 'prep', id: 'prep', title: say(f, 'sheets.kind.prep'), note: '', content }];
}
