import type { ReactElement } from 'react';
import { onHand } from '../../event';
import { reserveBowls } from '../../frying';
import { mostOff, weighedFromG } from '../../measure';
import type { DishPlan, ScaledLine } from '../../menu';
import { say } from '../../words';
import { amountWords, linesWords, measureWords } from '../amounts';
import { foodTitle } from '../food-name';
import { isChanged, Was } from '../reprint';
import type { PrintedRow, Reprint, SheetContext } from '../types';

function lineText(line: ScaledLine, { formats: f, names }: SheetContext): string {
  const extras = [...(line.preparation === undefined ? [] : [line.preparation]), ...(line.toTaste ? [say(f, 'sheets.prep.toTaste')] : [])];
  return [foodTitle(names.ingredient(line.ingredient)), ...extras].join(', ');
}

/** What is weighed for a dish at once; what each bowl gets is weighed later. */
const atOnce = (dish: DishPlan): readonly ScaledLine[] => dish.lines.filter((line) => !line.perBowl);

/** A line as it stands on paper; a food that a dish has twice is told apart by its place. */
function printedLine(dish: DishPlan, line: ScaledLine, at: number, context: SheetContext): PrintedRow {
  const nth = atOnce(dish).slice(0, at).filter((l) => l.ingredient === line.ingredient && l.preparation === line.preparation).length;
  return { key: ['weigh', dish.id, line.ingredient, line.preparation ?? '', ...(nth === 0 ? [] : [String(nth)])].join('/'), name: `${dish.name}, ${lineText(line, context)}`, cells: { amount: measureWords(context.formats, line) } };
}

/** The lines of a dish for the next print. */
export const printedAmounts = (dish: DishPlan, context: SheetContext): readonly PrintedRow[] => atOnce(dish).map((line, at) => printedLine(dish, line, at, context));

/** An amount of more signs than this may be broken, so that the food beside it has room. */
const longAmount = 14;

/** By how much amounts on this sheet are rounded at most, with what there is to measure with. */
export function Rounding({ context: { plan, formats: f } }: { readonly context: SheetContext }): ReactElement {
  const { preferences } = plan.event;
  const there = onHand(preferences);
  const bound = mostOff(preferences.units, there);
  return (
    <p className="small">
      {bound.poured === null ? say(f, 'measuring.pours.none') : say(f, 'measuring.pours', { off: bound.poured })}
      {bound.weighed !== null && there.scaleStepG !== null && ` ${say(f, 'measuring.weighs', { off: bound.weighed, from: weighedFromG(there.scaleStepG) })}`}
    </p>
  );
}

/** What is weighed for a dish; on a reprint a bar beside what changed, the old amount in brackets. */
export function Amounts({ dish, reprint, context }: { readonly dish: DishPlan; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f, names } = context;
  const later = dish.lines.filter((line) => line.perBowl);
  const bowls = plan.frying.bowls.filter((b) => b.dish === dish.id).length;
  const reserve = reserveBowls(plan.menu.dishes, plan.frying).find((r) => r.dish === dish.id);
  return (
    <section className="dish">
      <h3>{say(f, 'sheets.prep.weighFor', { dish: dish.name, total: amountWords(f, dish.total) })}</h3>
      <ul className="lines">
        {atOnce(dish).map((line, at) => {
          const row = printedLine(dish, line, at, context);
          return <li key={row.key} className={isChanged(reprint, row) ? 'changed' : undefined}><span>{lineText(line, context)}</span><strong className={(row.cells['amount'] ?? '').length > longAmount ? 'n' : 'nowrap'}>{row.cells['amount']}<Was reprint={reprint} row={row} cell="amount" /></strong></li>;
        })}
      </ul>
      {reserve !== undefined && <p className="small">{say(f, 'sheets.prep.reserve', { late: reserve.numbers.length, all: reserve.all })}</p>}
      {later.length > 0 && <p className="small">{say(f, 'sheets.prep.perBowl', { lines: linesWords(f, names, later), bowls })}</p>}
    </section>
  );
}
