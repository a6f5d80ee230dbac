import { memo } from 'react';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import styles from './look.module.css';

const howMany = 5;

/** The next jobs: from now on the day itself, else the first of the day. */
export const NextJobs = memo(function NextJobs({ now }: { readonly now: number | null }) {
  const t = useSpeaker();
  const { plan, event } = useLaneDocument();
  const from = now ?? event.opensAt - 120;
  const jobs = plan.day.tasks.filter((task) => task.who.length > 0 && task.start >= from).slice(0, howMany);
  if (jobs.length === 0) return null;
  const nameOf = (id: string): string => event.people.find((p) => p.id === id)?.name ?? id;
  return (
    <section className={styles['next']} aria-labelledby="next-title">
      <h2 id="next-title">{now === null ? t('board.firstJobs') : t('board.nextJobs')}</h2>
      <ul>
        {jobs.map((task) => (
          <li key={task.id}>
            <time>{t.formats.clock(task.start)}</time>
            <span>{t.message(task.name)}</span>
            <span className={styles['who']}>{t.formats.list(task.who.map(nameOf))}</span>
          </li>
        ))}
      </ul>
    </section>
  );
});
