import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import styles from './frying.module.css';

/** Where the fry line cannot keep up, the smallest changes that would serve everybody, what is not proven, and where the lead had to be cut. Nothing when there is nothing to say. */
export function Shortages({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const { shortages, leads, unmetBound } = plan.frying;
  const cut = leads.flatMap((l) => (l.note === null ? [] : [l.note]));
  if (shortages.length === 0 && cut.length === 0) return null;
  return (
    <section className={styles['unmet']}>
      {shortages.length > 0 && <h3>{t('view.frying.shortages')}</h3>}
      {unmetBound !== null && (
        <p>
          {t('view.frying.short')} <FigureButton figure={unmetBound.unmet} title={t('view.frying.short')} />{'; '}
          {t('view.frying.shortLeast')} <FigureButton figure={unmetBound.atLeast} title={t('view.frying.shortLeast')} />{'. '}
          {unmetBound.gap.value > 0
            ? <>{t('view.frying.shortGap')} <FigureButton figure={unmetBound.gap} title={t('view.frying.shortGap')} />.</>
            : t('view.frying.shortProven')}
        </p>
      )}
      {cut.map((note) => <p key={t.message(note)}>{t.message(note)}</p>)}
      <ul className={styles['list']}>
        {shortages.map((s) => (
          <li key={`${s.dish}-${s.from}`}>
            <p><strong>{t('view.frying.shortage', { dish: names.dish(s.dish), from: s.from, to: s.to, wanted: s.wanted, unmet: s.unmet })}</strong></p>
            {s.remedies.length > 0 && <><p>{t('view.frying.remedies')}</p><ul className={styles['remedies']}>{s.remedies.map((r) => <li key={t.message(r)}>{t.message(r)}</li>)}</ul></>}
            {s.note !== null && unmetBound?.gap.value !== 0 && <p>{t.message(s.note)}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
