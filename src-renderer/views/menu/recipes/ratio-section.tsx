import { useState } from 'react';
import type { Recipe } from '../../../../shared/event';
import { ingredientName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import table from '../../../parts/table.module.css';
import { ViewSection } from '../../../parts/view-page';
import { ratioRows, usualBase } from './ratio';
import styles from './recipes.module.css';

/** The recipe as a ratio: every ingredient in percent of one of them. */
export function RatioSection({ recipe }: { readonly recipe: Recipe }) {
  const t = useSpeaker();
  const [chosen, setChosen] = useState<string | null>(null);
  const foods = [...new Set(recipe.ingredients.map((line) => line.ingredient))];
  const base = chosen !== null && foods.includes(chosen) ? chosen : usualBase(recipe.ingredients);
  return (
    <ViewSection title={t('view.recipes.ratio')} lead={t('view.recipes.ratioLead')}>
      <div className={styles['ratio']}>
        <Choice label={t('view.recipes.base')} value={base} onCommit={(food) => { setChosen(food); return null; }} options={foods.map((value) => ({ value, text: ingredientName(value) }))} />
        <table className={table['table']}>
          <caption className="unseen">{t('view.recipes.ratio')}</caption>
          <thead><tr><th scope="col">{t('view.recipes.food')}</th><th scope="col" className={table['n']}>{t('view.recipes.weight')}</th><th scope="col" className={table['n']}>{t('view.recipes.percent')}</th></tr></thead>
          <tbody>
            {ratioRows(recipe.ingredients, base).map((row) => (
              <tr key={row.ingredient} data-ratio={row.ingredient}>
                <td>{ingredientName(row.ingredient)}</td>
                <td className={table['n']}>{row.grams === null ? '–' : `${t.formats.number(row.grams, row.grams < 10 ? 1 : 0)} g`}</td>
                <td className={table['n']}>{row.percent === null ? '–' : `${t.formats.number(row.percent, row.percent < 10 ? 1 : 0)} %`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </ViewSection>
  );
}
