import type { ReactElement } from 'react';
import type { Task } from '../../timeline';
import { say, sayMessage } from '../../words';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';
import { clockInDay } from './by-day';
import { cannotSlip, whoWords, withWords } from './task-words';

interface Props {
  readonly task: Task;
  /** Names who does it; off on a helper's own page. */
  readonly showWho: boolean;
  readonly hour: boolean;
  readonly context: SheetContext;
}

/** One job: when, until when, what, who, with what. A bar at the left edge marks what must not slip. */
export function TaskRow({ task, showWho, hour, context }: Props): ReactElement {
  const { plan, formats: f } = context;
  const late = plan.day.overloads.find((o) => o.task === task.id);
  return (
    <tr className={`${cannotSlip(task) ? 'bar' : 'space'}${hour ? ' hour' : ''}`}>
      <td className="tickcell"><TickBox small={showWho} /></td>
      <td className="mid strong nowrap">{clockInDay(f, task.start)}</td>
      <td className="nowrap">{clockInDay(f, task.end)}</td>
      <td>
        {showWho ? sayMessage(f, task.name) : <strong>{sayMessage(f, task.name)}</strong>}
        {task.note !== undefined && <><br /><span className="small">{sayMessage(f, task.note)}</span></>}
        {late !== undefined && <><br /><span className="small strong">{late.lateMinutes > 0 && `${say(f, 'sheets.day.late', { minutes: late.lateMinutes })}. `}{sayMessage(f, late.message)}</span></>}
      </td>
      {showWho && <td>{whoWords(task, context)}</td>}
      <td className="small">{withWords(task, context)}</td>
    </tr>
  );
}

const hour = (task: Task | undefined): number => Math.floor((task?.start ?? 0) / 60);

/** A table of jobs in order of time; the first job of each clock hour has a heavier line above. */
export function TaskTable({ tasks, showWho, context }: { readonly tasks: readonly Task[]; readonly showWho: boolean; readonly context: SheetContext }): ReactElement {
  const { formats: f, plan } = context;
  const clock = plan.event.preferences.clock === '12' ? ' clock12' : '';
  return (
    <table className={`tasks${showWho ? ' close' : ''}${clock}`}>
      <thead>
        <tr>
          <th scope="col" className="t0">{say(f, 'sheets.tick')}</th>
          <th scope="col" className="t1">{say(f, 'sheets.day.time')}</th>
          <th scope="col" className="t2">{say(f, 'sheets.day.until')}</th>
          <th scope="col">{say(f, 'sheets.day.what')}</th>
          {showWho && <th scope="col" className="t3">{say(f, 'sheets.day.who')}</th>}
          <th scope="col" className="t4">{say(f, 'sheets.day.with')}</th>
        </tr>
      </thead>
      <tbody>
        {tasks.map((task, at) => <TaskRow key={task.id} task={task} showWho={showWho} hour={at > 0 && hour(tasks[at - 1]) !== hour(task)} context={context} />)}
      </tbody>
    </table>
  );
}
