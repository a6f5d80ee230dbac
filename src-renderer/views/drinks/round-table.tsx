import { amountText } from '../../../shared/measure';
import type { Plan } from '../../../shared/plan';
import { foodName, type Names } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { litresWords } from './litres-words';
import styles from '../../parts/table.module.css';

/** Every potful: when, how much water, what goes in, which flask it fills. */
export function RoundTable({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const f = t.formats;
  return (
    <div className={styles['scroll']}>
      <table className={styles['table']}>
        <caption className="unseen">{t('view.drinks.roundTable')}</caption>
        <thead>
          <tr>
            <th scope="col" className={styles['n']}>{t('view.drinks.round')}</th>
            <th scope="col">{t('view.drinks.drink')}</th>
            <th scope="col">{t('view.drinks.pot')}</th>
            <th scope="col">{t('view.drinks.start')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.heat')}</th>
            <th scope="col">{t('view.drinks.ready')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.makes')}</th>
            <th scope="col" className={styles['n']}>{t('view.drinks.water')}</th>
            <th scope="col">{t('view.drinks.with')}</th>
            <th scope="col">{t('view.drinks.fills')}</th>
          </tr>
        </thead>
        <tbody>
          {plan.drinks.rounds.map((r) => (
            <tr key={r.number}>
              <td className={styles['n']}>{f.number(r.number)}</td>
              <td><strong>{names.dish(r.drink)}</strong></td>
              <td>{names.thing(r.pot)}</td>
              <td><strong>{f.clock(r.startAt)}</strong></td>
              <td className={styles['n']}>{r.heatMinutes.value > 0 && <FigureButton figure={r.heatMinutes} title={t('view.drinks.roundOf', { n: r.number, what: t('view.drinks.heat') })} />}</td>
              <td>{f.clock(r.readyAt)}</td>
              <td className={styles['n']}>{litresWords(t, r.litres)}</td>
              <td className={styles['n']}>{!r.madeAhead && <FigureButton figure={r.waterLitres} title={t('view.drinks.roundOf', { n: r.number, what: t('view.drinks.water') })} />}</td>
              <td className={styles['note']}>{r.note !== null ? t.message(r.note) : r.ingredients.filter((i) => i.ingredient !== 'water').map((i) => {
                const food = `${f.food(amountText(i.amount), i.ingredient).text} ${foodName(names.ingredient(i.ingredient))}`;
                return r.apart.includes(i.ingredient) ? t('drinks.beside', { food }) : food;
              }).join(', ')}</td>
              <td className={styles['note']}>{plan.drinks.fills.filter((fill) => fill.round === r.number).map((fill) => t('view.drinks.fillAt', { flask: names.thing(fill.dispenser), amount: litresWords(t, fill.litres), at: fill.at })).join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
