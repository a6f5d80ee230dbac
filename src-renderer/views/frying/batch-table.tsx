import { Fragment } from 'react';
import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import styles from '../../parts/table.module.css';

/** All batches in the order of putting in; each bowl of batter stands before its first batch. */
export function BatchTable({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const f = t.formats;
  const { batches, bowls } = plan.frying;
  const firstUse = new Map<number, number>();
  for (const b of batches) for (const bowl of b.bowls) if (!firstUse.has(bowl)) firstUse.set(bowl, b.number);
  const bowlsBefore = (batch: number) => bowls.filter((bowl) => firstUse.get(bowl.number) === batch);
  return (
    <div className={styles['scroll']}>
      <table className={styles['table']}>
        <caption className="unseen">{t('view.frying.batchTable')}</caption>
        <thead>
          <tr>
            <th scope="col" className={styles['n']}>{t('view.frying.batch')}</th>
            <th scope="col">{t('view.frying.putIn')}</th>
            <th scope="col">{t('view.frying.liftOut')}</th>
            <th scope="col" className={styles['n']}>{t('view.frying.pieces')}</th>
            <th scope="col">{t('view.frying.dish')}</th>
            <th scope="col">{t('view.frying.pan')}</th>
            <th scope="col">{t('view.frying.bowl')}</th>
            <th scope="col">{t('view.frying.for')}</th>
            <th scope="col">{t('view.frying.eatBy')}</th>
          </tr>
        </thead>
        <tbody>
          {batches.map((b) => (
            <Fragment key={b.number}>
              {bowlsBefore(b.number).map((bowl) => (
                <tr key={`bowl-${bowl.number}`} data-kind="bowl">
                  <td colSpan={9}>
                    {t('sheets.fry.bowl', { number: bowl.number, at: bowl.mixAt, useBy: bowl.useBy })}; {t('sheets.fry.bowlDish', { dish: names.dish(bowl.dish), batter: f.figure(bowl.batterKg, 'kg'), pieces: bowl.pieces })}
                  </td>
                </tr>
              ))}
              <tr>
                <td className={styles['n']}>{f.number(b.number)}</td>
                <td><strong>{f.clock(b.dropAt)}</strong></td>
                <td>{f.clock(b.liftAt)}</td>
                <td className={styles['n']}>{f.number(b.pieces)}</td>
                <td>{names.dish(b.dish)}</td>
                <td>{names.thing(b.pan)}</td>
                <td>{f.list(b.bowls.map((n) => f.number(n)))}</td>
                <td>{names.wave(b.wave)}</td>
                <td>{f.clock(b.eatBy)}</td>
              </tr>
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );
}
