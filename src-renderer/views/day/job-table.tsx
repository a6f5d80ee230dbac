import { mustNotSlip, type Names } from '../../../shared/sheets';
import type { Task } from '../../../shared/timeline';
import { useSpeaker, type Speaker } from '../../app/speak';
import styles from '../../parts/table.module.css';
import own from './day.module.css';

/** Shares of the attention most jobs take: nothing to tell. */
const usualShares = [0, 0.8, 1];
const unusualShare = (share: number): boolean => !usualShares.some((usual) => Math.abs(usual - share) < 0.005);

function who(task: Task, t: Speaker, names: Names): string {
  if (task.who.length > 0) return t.formats.list(task.who.map(names.person));
  return task.attention === 0 ? t('sheets.day.byItself') : t('sheets.day.nobody');
}

/** Jobs in order of time. */
export function JobTable({ tasks, names, chosen }: { readonly tasks: readonly Task[]; readonly names: Names; readonly chosen: string | null }) {
  const t = useSpeaker();
  const f = t.formats;
  return (
    <div className={styles['scroll']}>
      <table className={styles['table']}>
        <caption className="unseen">{t('view.day.listTitle')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('view.day.start')}</th>
            <th scope="col">{t('view.day.until')}</th>
            <th scope="col">{t('view.day.job')}</th>
            <th scope="col">{t('view.day.who')}</th>
            <th scope="col">{t('view.day.with')}</th>
            <th scope="col" className={styles['n']}>{t('view.day.slack')}</th>
          </tr>
        </thead>
        <tbody>
          {tasks.map((task) => (
            <tr key={task.id} className={task.id === chosen ? own['chosen'] : ''}>
              <td className={styles['nowrap']}><strong>{f.clock(task.start)}</strong></td>
              <td className={styles['nowrap']}>{f.clock(task.end)}</td>
              <td>{t.message(task.name)}{task.note !== undefined && <><br /><span className={styles['note']}>{t.message(task.note)}</span></>}</td>
              <td>{who(task, t, names)}{unusualShare(task.attention) && <span className={styles['note']}>, {t('sheets.day.share', { share: task.attention })}</span>}</td>
              <td className={styles['note']}>{task.needs.map((n) => t('sheets.day.thing', { thing: names.thing(n.thing), count: n.count })).join(', ')}</td>
              <td className={styles['n']}>{mustNotSlip(task) ? t('view.day.noSlack') : f.duration(Math.max(0, task.slack))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
