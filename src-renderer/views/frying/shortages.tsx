import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import styles from './frying.module.css';

/** Where the fry line cannot keep up, and the smallest changes that would serve everybody. Nothing when all are served. */
export function Shortages({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const { shortages } = plan.frying;
  if (shortages.length === 0) return null;
  return (
    <section className={styles['unmet']}>
      <h3>{t('view.frying.shortages')}</h3>
      <ul className={styles['list']}>
        {shortages.map((s) => (
          <li key={`${s.dish}-${s.from}`}>
            <p><strong>{t('view.frying.shortage', { dish: names.dish(s.dish), from: s.from, to: s.to, wanted: s.wanted, unmet: s.unmet })}</strong></p>
            {s.remedies.length > 0 && <><p>{t('view.frying.remedies')}</p><ul className={styles['remedies']}>{s.remedies.map((r) => <li key={t.message(r)}>{t.message(r)}</li>)}</ul></>}
          </li>
        ))}
      </ul>
    </section>
  );
}
