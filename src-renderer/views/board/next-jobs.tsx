import { memo } from 'react';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { jobsAhead } from './first-jobs';
import styles from './look.module.css';

const howMany = 6;

/** The next jobs: the ones ahead of `now`, else the first of all. */
export const NextJobs = memo(function NextJobs({ now }: { readonly now: number | null }) {
  const t = useSpeaker();
  const { plan, event } = useLaneDocument();
  const { begun, jobs } = jobsAhead(plan, now);
  if (jobs.length === 0) return null;
  const nameOf = (id: string): string => event.people.find((p) => p.id === id)?.name ?? id;
  return (
    <section className={styles['next']} aria-labelledby="next-title">
      <h2 id="next-title">{begun ? t('board.nextJobs') : t('board.firstJobs')}</h2>
      <ul>
        {jobs.slice(0, howMany).map((task) => (
          <li key={task.id}>
            <time>{t.formats.clock(task.start)}</time>
            <span>{t.message(task.name)}</span>
            <span className={styles['who']}>{task.who.length === 0 ? t('view.day.nobody') : t.formats.list(task.who.map(nameOf))}</span>
          </li>
        ))}
      </ul>
    </section>
  );
});
