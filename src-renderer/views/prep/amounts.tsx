import { reserveBowls } from '../../../shared/frying';
import { amountText } from '../../../shared/measure';
import type { DishPlan } from '../../../shared/menu';
import { useSpeaker } from '../../app/speak';
import type { PrepContext } from './context';
import styles from './prep.module.css';

/** The ingredients of a dish that are made ready together; what goes into the bowls is told in all, for so many bowls. */
export function Amounts({ dish, context: { plan, formats, names } }: { readonly dish: DishPlan; readonly context: PrepContext }) {
  const t = useSpeaker();
  const measured = (line: DishPlan['lines'][number]): string => {
    const { text, beside } = formats.food(amountText(line.amount), line.ingredient);
    return beside === '' ? text : `${text} (${beside})`;
  };
  const later = dish.lines.filter((line) => line.perBowl);
  const reserve = reserveBowls(plan.menu.dishes, plan.frying).find((r) => r.dish === dish.id);
  const bowls = plan.frying.bowls.filter((bowl) => bowl.dish === dish.id).length;
  return (
    <section className={styles['dish']} data-dish={dish.id}>
      <h4>{t('view.prep.amountsOf', { dish: dish.name })}</h4>
      <dl>
        {dish.lines.filter((line) => !line.perBowl).map((line, at) => (
          <div key={`${at} ${line.ingredient}`}>
            <dt>{names.ingredient(line.ingredient)}{line.preparation === undefined ? '' : <span className={styles['line']}>, {line.preparation}</span>}</dt>
            <dd>{measured(line)}</dd>
          </div>
        ))}
      </dl>
      {reserve !== undefined && <p className={styles['line']}>{t('sheets.prep.reserve', { late: reserve.numbers.length, all: reserve.all })}</p>}
      {later.length > 0 && <p className={styles['line']}>{t('view.prep.bowls', { bowls, lines: formats.list(later.map((line) => `${measured(line)} ${names.ingredient(line.ingredient).toLowerCase()}`)) })}</p>}
    </section>
  );
}
