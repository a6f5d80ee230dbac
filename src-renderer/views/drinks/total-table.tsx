import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useSpeaker, type Speaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { litresWords } from './litres-words';
import styles from '../../parts/table.module.css';

/** Clock time the first round of a drink is begun. */
function firstStart(plan: Plan, drink: string, t: Speaker): string {
  const starts = plan.drinks.rounds.filter((r) => r.drink === drink).map((r) => r.startAt);
  return starts.length === 0 ? '–' : t.formats.clock(Math.min(...starts));
}

/** When first begun, served, brewed, rounds, left and not served of each drink. */
export function TotalTable({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  return (
    <div className={styles['scroll']}>
      <table className={styles['table']}>
        <caption className="unseen">{t('view.drinks.totals')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('view.drinks.drink')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.firstStarted')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.served')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.brewed')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.rounds')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.left')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.unmet')}</th>
          </tr>
        </thead>
        <tbody>
          {plan.drinks.totals.map((d) => (
            <tr key={d.drink}>
              <td><strong>{names.dish(d.drink)}</strong>{d.notes.length > 0 && <div className={styles['note']} data-made>{d.notes.map((n) => t.message(n)).join('; ')}</div>}</td>
              <td className={styles['n']} data-first-start>{firstStart(plan, d.drink, t)}</td>
              <td className={styles['n']}><FigureButton figure={d.served} title={t('view.sheets.figureOf', { of: names.dish(d.drink), what: t('view.drinks.served') })} /></td>
              <td className={styles['n']}><FigureButton figure={d.brewed} title={t('view.sheets.figureOf', { of: names.dish(d.drink), what: t('view.drinks.brewed') })} /></td>
              <td className={styles['n']}><FigureButton figure={d.rounds} title={t('view.sheets.figureOf', { of: names.dish(d.drink), what: t('view.drinks.rounds') })} /></td>
              <td className={styles['n']}>{litresWords(t, d.leftLitres)}</td>
              <td className={styles['n']}>{d.unmetLitres > 0 ? litresWords(t, d.unmetLitres) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
