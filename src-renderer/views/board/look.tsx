import { memo } from 'react';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Mark } from '../../parts/mark';
import { FindingFacts } from './finding-facts';
import { lookItems } from './look-items';
import styles from './look.module.css';

/** What needs a look: safety that is out of bounds, guests who would go without, jobs nobody can do in time. Nothing when all is well. */
export const Look = memo(function Look() {
  const t = useSpeaker();
  const { plan } = useLaneDocument();
  const items = lookItems(plan);
  // Allergies make long texts: all is folded but the most serious thing.
  const opened = items.find((item) => item.level === 'stop')?.key;
  const cautions = plan.safety.findings.filter((f) => f.level === 'caution');
  return (
    <section className={styles['look']} aria-labelledby="look-title">
      <h2 id="look-title">{t('board.needsALook')}</h2>
      {items.length === 0 && <p className={styles['clear']}>{t('board.allWell')}</p>}
      <ul>
        {items.map((item) => (
          <li key={item.key} className={styles[item.level]}>
            <details open={item.key === opened}>
            <summary className={styles['title']}><Mark kind={item.level} /> <span className="unseen">{t(item.level === 'stop' ? 'board.stop' : 'board.watch')}: </span>{t.message(item.title ?? item.text)}</summary>
            {item.title !== null && <p>{t.message(item.text)}</p>}
            {item.more.map((m, n) => <p key={n}>{t.message(m)}</p>)}
            {item.finding !== undefined && <FindingFacts finding={item.finding} />}
            </details>
          </li>
        ))}
      </ul>
      {cautions.length > 0 && (
        <details className={styles['cautions']}>
          <summary>{t('board.cautions', { n: cautions.length })}</summary>
          <ul>{cautions.map((f) => <li key={`${f.rule} ${f.about.join(' ')}`}><p className={styles['title']}>{t.message(f.title)}</p><p>{t.message(f.message)}</p><FindingFacts finding={f} /></li>)}</ul>
        </details>
      )}
      {plan.safety.findings.length > 0 && <p className={styles['guidance']}>{t('safety.guidance')}</p>}
    </section>
  );
});
