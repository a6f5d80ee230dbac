import type { ReactElement } from 'react';
import type { Task } from '../../timeline';
import { say } from '../../words';
import { shiftDay } from '../calendar';
import type { SheetContext, SheetDraft } from '../types';
import { Allergies } from './allergies';
import { byDay } from './by-day';
import { mustNotSlip } from './must-not-slip';
import { dayRows } from './rows';
import { DayTable } from './task-row';

function Days({ tasks, wall, context }: { readonly tasks: readonly Task[]; readonly wall: boolean; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f } = context;
  // A pot that stands dirty is nobody's job; who washes it has a row.
  const days = byDay(dayRows(tasks.filter((t) => !t.id.endsWith('/stands')), plan.frying, wall ? 'wall' : 'own'));
  return (
    <>
      {days.map((d) => (
        <section key={d.day}>
          {days.length > 1 && <h2>{f.date(shiftDay(plan.event.day, d.day))}</h2>}
          <DayTable rows={d.rows} wall={wall} context={context} />
        </section>
      ))}
      <div className="cautions">
        {tasks.some(mustNotSlip) && <p className="small">{say(f, 'sheets.day.keyNoSlip')}</p>}
        <p className="small">{say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
}

/** The day plan: all jobs by time, what has a sheet of its own in short. Not made when there is no job. */
export function dayDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  if (plan.day.tasks.length === 0) return [];
  const content = (
    <>
      {plan.day.overloads.length > 0 && (
        <p className="strong">{say(f, 'sheets.day.overloads', { n: plan.day.overloads.length })}</p>
      )}
      <Days tasks={plan.day.tasks} wall context={context} />
      <Allergies context={context} />
    </>
  );
  return [{ kind: 'day', id: 'day', title: say(f, 'sheets.kind.day'), note: '', content }];
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
    const draft: SheetDraft = { kind: 'helpers', id: `helper-${person.id}`, title: say(f, 'sheets.helper', { name: person.name }), note, content: <Days tasks={tasks} wall={false} context={context} /> };
    return [draft];
  });
}
