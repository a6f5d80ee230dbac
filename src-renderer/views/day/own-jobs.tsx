import { addOwnJob, changeJob, freshId, holdJobs, letGoOfPrinted } from '../../../shared/edit';
import { dayOf } from '../../../shared/event';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { hasOwnPlan, jobOf } from './job-ref';
import styles from './day.module.css';

/** Adds a job of the cook's own, and holds all jobs at their printed minute or lets go of them. */
export function DayActions({ onAdded }: { readonly onAdded: (task: string) => void }) {
  const t = useSpeaker();
  const { event, plan, edit, readOnly } = useDocument();
  if (readOnly) return null;
  const { ownJobs, changes } = dayOf(event);
  const printed = changes.some((c) => c.held === 'printed');
  const hold = (): void => {
    const starts = new Map<string, number>();
    for (const task of plan.day.tasks) if (!hasOwnPlan(task)) starts.set(jobOf(task), Math.min(starts.get(jobOf(task)) ?? task.start, task.start));
    edit(holdJobs(event, [...starts].map(([job, at]) => ({ job, at })), 'printed'));
  };
  return (
    <div className={styles['actions']}>
      <Button onPress={() => {
        const id = freshId(ownJobs, 'job');
        if (edit(addOwnJob(event, { id, name: t('view.day.newJob'), minutes: 15 })) === null) onAdded(`own/${id}`);
      }}>{t('view.day.addJob')}</Button>
      {printed ? <Button onPress={() => { edit(letGoOfPrinted(event)); }}>{t('view.day.letGo')}</Button> : <Button onPress={hold}>{t('view.day.hold')}</Button>}
    </div>
  );
}

/** Jobs that are left out, what then is not done, and the way back. */
export function OffJobs() {
  const t = useSpeaker();
  const { event, plan, edit, readOnly } = useDocument();
  if (plan.day.off.length === 0) return null;
  return (
    <section className={styles['off']} aria-label={t('view.day.off')}>
      <h3>{t('view.day.off')}</h3>
      <ul>{plan.day.off.map((o) => (
        <li key={o.job}>{t.message(o.message)} {!readOnly && <Button kind="link" label={`${t('view.day.putBack')}: ${t.message(o.name)}`} onPress={() => { edit(changeJob(event, { key: o.job, name: t.message(o.name) }, { off: undefined })); }}>{t('view.day.putBack')}</Button>}</li>
      ))}</ul>
    </section>
  );
}
