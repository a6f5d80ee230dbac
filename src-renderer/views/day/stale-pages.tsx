import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { pagesOutOfDate, staleMessage } from './paper';
import styles from './day.module.css';

/** Helpers' printed pages that no longer say what the plan says: which job was printed at which minute, and what to do. */
export function StalePages() {
  const t = useSpeaker();
  const { plan } = useDocument();
  const pages = pagesOutOfDate(plan);
  if (pages.length === 0) return null;
  return (
    <section className={styles['stale']} aria-label={t('view.day.paper')}>
      <h3>{t('view.day.paper')}</h3>
      <ul>{pages.map((page) => <li key={page.person}><strong>{t('view.day.paper.title', { who: page.name, version: page.version })}.</strong> {t.message(staleMessage(page))}</li>)}</ul>
    </section>
  );
}
