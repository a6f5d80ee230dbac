import type { ReactElement } from 'react';
import type { Task } from '../../timeline';
import { say } from '../../words';
import { shiftDay } from '../calendar';
import { Since } from '../reprint';
import type { PrintedRow, SheetContext, SheetDraft } from '../types';
import { Allergies } from './allergies';
import { byDay } from './by-day';
import { mustNotSlip } from './must-not-slip';
import { allPrinted, printedDayRow } from './printed';
import { dayRows } from './rows';
import { DayTable } from './task-row';

/** Jobs as a table for each day with, on a reprint, what changed since; and their rows for the next print. */
function listed(tasks: readonly Task[], id: string, wall: boolean, context: SheetContext): { readonly content: ReactElement; readonly rows: readonly PrintedRow[] } {
  const { plan, formats: f } = context;
  // A pot that stands dirty is nobody's job; who washes it has a row.
  const own = dayRows(tasks.filter((t) => !t.id.endsWith('/stands')), plan.frying, wall ? 'wall' : 'own').map((row) => ({ start: row.start, row, printed: printedDayRow(row, wall, context) }));
  const days = byDay(own);
  const rows = allPrinted(own.map((r) => r.printed));
  const reprint = context.reprintOf?.(id) ?? null;
  const content = (
    <>
      <Since reprint={reprint} rows={rows} formats={f} />
      {days.map((d) => (
        <section key={d.day}>
          {days.length > 1 && <h2>{f.date(shiftDay(plan.event.day, d.day))}</h2>}
          <DayTable rows={d.rows} reprint={reprint} wall={wall} context={context} />
        </section>
      ))}
      <div className="cautions">
        {tasks.some(mustNotSlip) && <p className="small">{say(f, 'sheets.day.keyNoSlip')}</p>}
        <p className="small">{say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
  return { content, rows };
}

/** The day plan: all jobs by time, what has a sheet of its own in short. Not made when there is no job. */
export function dayDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  if (plan.day.tasks.length === 0) return [];
  const table = listed(plan.day.tasks, 'day', true, context);
  const content = (
    <>
      {plan.day.overloads.length > 0 && (
        <p className="strong">{say(f, 'sheets.day.overloads', { n: plan.day.overloads.length })}</p>
      )}
      {table.content}
      <Allergies context={context} />
    </>
  );
  return [{ kind: 'day', id: 'day', title: say(f, 'sheets.kind.day'), note: '', rows: table.rows, content }];
}

/** One page per helper who has a job: their hours, what they may carry, their jobs. */
export function helperDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  return plan.event.people.flatMap((person) => {
    const tasks = plan.day.tasks.filter((t) => t.who.includes(person.id));
    if (tasks.length === 0) return [];
    const busy = plan.day.busy.find((b) => b.person === person.id);
    const note = [
      say(f, 'sheets.helper.hours', { from: person.from, to: person.to }),
      ...(busy === undefined ? [] : [say(f, 'sheets.helper.busy', { minutes: busy.minutes.value })]),
      ...(person.liftKg === undefined ? [] : [say(f, 'sheets.helper.lift', { kg: f.amount({ amount: String(person.liftKg), unit: 'kg' }) })]),
    ].join('; ');
    const draft: SheetDraft = { kind: 'helpers', id: `helper-${person.id}`, title: say(f, 'sheets.helper', { name: person.name }), note, ...listed(tasks, `helper-${person.id}`, false, context) };
    return [draft];
  });
}
