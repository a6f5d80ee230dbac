import { amountText } from '../../../shared/measure';
import type { DishPlan } from '../../../shared/menu';
import { useSpeaker } from '../../app/speak';
import { nameIn } from '../../app/ingredient-name';
import table from '../../parts/table.module.css';
import styles from './menu.module.css';

/** The recipe at the size of this event. */
export function ScaledRecipe({ dish }: { readonly dish: DishPlan }) {
  const t = useSpeaker();
  const { recipe } = dish;
  return (
    <div className={styles['recipe']}>
      <h3>{t('view.menu.recipe', { name: recipe.name, times: dish.factor })}</h3>
      <p className={styles['note']}>{t('view.menu.makes', { amount: t.formats.amount(recipe.yield.amount), portions: recipe.yield.portions })}. {recipe.source}</p>
      <table className={`${table['table']} ${styles['lines']}`}>
        <thead><tr><th scope="col" className={table['n']}>{t('view.menu.amount')}</th><th scope="col">{t('view.menu.ingredient')}</th><th scope="col">{t('view.menu.preparation')}</th></tr></thead>
        <tbody>
          {dish.lines.map((line, i) => {
            const { text, beside, rounding } = t.formats.food(amountText(line.amount), line.ingredient);
            return <tr key={`${line.ingredient} ${i}`}>
              <td className={table['n']}>{text}</td>
              <td>{nameIn(recipe, line.ingredient)}</td>
              <td className={table['note']}>{[line.preparation, beside === '' ? undefined : beside, rounding === '' ? undefined : rounding, line.perBowl ? t('view.menu.perBowl') : undefined, line.toTaste ? t('view.menu.toTaste') : undefined].filter((x) => x !== undefined).join('; ')}</td>
            </tr>;
          })}
        </tbody>
      </table>
      {recipe.steps.length > 0 && (
        <>
          <h3>{t('view.menu.steps')}</h3>
          <ol className={styles['steps']}>{recipe.steps.map((step) => <li key={step.id}>{step.name}</li>)}</ol>
        </>
      )}
    </div>
  );
}
