import { dayOf } from '../../../shared/event';
import { mustNotSlip, type Names } from '../../../shared/sheets';
import type { Task } from '../../../shared/timeline';
import { useDocument } from '../../app/document';
import { useSpeaker, type Speaker } from '../../app/speak';
import { Mark } from '../../parts/mark';
import { JobControls } from './job-controls';
import { jobOf } from './job-ref';
import styles from './day.module.css';

/** Why a job is there, by its kind. */
function why(task: Task, names: Names, t: Speaker): string {
  const dish = task.dish === undefined ? '' : names.dish(task.dish);
  switch (task.kind) {
    case 'step': return t('view.day.why.step', { dish });
    case 'fry': case 'bowl': case 'heatOil': case 'watchOil': return t('view.day.why.frying');
    case 'brew': case 'fill': return t('view.day.why.drinks');
    case 'cool': case 'store': return t('view.day.why.leftovers');
    case 'own': return t('view.day.why.own');
    case 'rest': return t('view.day.why.rest');
    case 'check': return t('view.day.why.check');
    case 'shop': return t('view.day.why.shop');
    case 'wash': return t('view.day.why.wash');
    case 'serve': case 'setUp': return t('view.day.why.guests');
    case 'clean': case 'oilAway': return t('view.day.why.clean');
  }
}

function Jobs({ title, tasks, t, onChoose }: { readonly title: string; readonly tasks: readonly Task[]; readonly t: Speaker; readonly onChoose: (id: string) => void }) {
  if (tasks.length === 0) return null;
  return <div><dt>{title}</dt><dd>{tasks.map((o) => <button key={o.id} type="button" className={styles['jobLink']} onClick={() => onChoose(o.id)}>{t.formats.clock(o.start)} {t.message(o.name)}</button>)}</dd></div>;
}

/** The chosen job: when and who, why it is there, what it waits for and what waits for it, what is in its way, and what can be laid down about it. */
export function JobPanel({ task, names, onChoose }: { readonly task: Task; readonly names: Names; readonly onChoose: (task: string | null) => void }) {
  const t = useSpeaker();
  const f = t.formats;
  const { plan, event } = useDocument();
  const { tasks, overloads } = plan.day;
  const mine = tasks.filter((o) => jobOf(o) === jobOf(task)).map((o) => o.id);
  const last = new Set(mine);
  const waitsFor = tasks.filter((o) => !last.has(o.id) && tasks.some((own) => last.has(own.id) && own.after.includes(o.id)));
  const waiting = tasks.filter((o) => !last.has(o.id) && o.after.some((id) => last.has(id)));
  const late = overloads.filter((o) => [o.task, ...o.also].some((id) => last.has(id)));
  const own = dayOf(event).ownJobs.find((o) => `own/${o.id}` === jobOf(task));
  return (
    <section className={styles['panel']} aria-label={t('view.day.panel')}>
      <h4 className={styles['panelTitle']}>{t.message(task.name)}</h4>
      <p className={styles['panelWhen']}>
        <strong>{t('view.day.whenWho', { from: task.start, to: task.end, who: task.who.length > 0 ? f.list(task.who.map(names.person)) : t(task.attention === 0 ? 'sheets.day.byItself' : 'sheets.day.nobody') })}</strong>
        {task.held !== undefined && <span className={styles['heldWord']}>{t(`view.day.held.${task.held}`)}</span>}
      </p>
      {late.map((o) => <p key={`${o.task} ${o.message.id}`} role="status" className={styles['clash']}><Mark kind="watch" /> {!last.has(o.task) && <>{t.message(tasks.find((x) => x.id === o.task)?.name ?? task.name)}: </>}{t.message(o.message)}{o.clash !== undefined && <> {t.message(o.clash.message)}</>}</p>)}
      <dl className={styles['panelFacts']}>
        <div><dt>{t('view.day.whyHere')}</dt><dd>{why(task, names, t)}</dd></div>
        {task.needs.length > 0 && <div><dt>{t('view.day.with')}</dt><dd>{task.needs.map((n) => t('sheets.day.thing', { thing: names.thing(n.thing), count: n.count })).join(', ')}</dd></div>}
        <Jobs title={t('view.day.waitsFor')} tasks={waitsFor} t={t} onChoose={onChoose} />
        <Jobs title={t('view.day.waiting')} tasks={waiting} t={t} onChoose={onChoose} />
        <div><dt>{t('view.day.slack')}</dt><dd>{mustNotSlip(task) ? t('view.day.noSlack') : f.duration(Math.max(0, task.slack))}</dd></div>
        {task.note !== undefined && <div><dt>{t('view.day.note')}</dt><dd>{t.message(task.note)}</dd></div>}
      </dl>
      <JobControls key={jobOf(task)} task={task} own={own} onGone={() => onChoose(null)} />
    </section>
  );
}
