import { useState } from 'react';
import type { Recipe } from '../../../../shared/event';
import { ratioRows, usualBase } from '../../../../shared/menu';
import { nameIn } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { FigureButton } from '../../../parts/figure-button';
import table from '../../../parts/table.module.css';
import { ViewSection } from '../../../parts/view-page';
import styles from './recipes.module.css';

/** The recipe as a ratio: every ingredient in percent of one of them. */
export function RatioSection({ recipe }: { readonly recipe: Recipe }) {
  const t = useSpeaker();
  const [chosen, setChosen] = useState<string | null>(null);
  const foods = [...new Set(recipe.ingredients.map((line) => line.ingredient))];
  const base = chosen !== null && foods.includes(chosen) ? chosen : usualBase(recipe);
  return (
    <ViewSection title={t('view.recipes.ratio')} lead={t('view.recipes.ratioLead')}>
      <div className={styles['ratio']}>
        <Choice label={t('view.recipes.base')} value={base} onCommit={(food) => { setChosen(food); return null; }} options={foods.map((value) => ({ value, text: nameIn(recipe, value) }))} />
        <table className={table['table']}>
          <caption className="unseen">{t('view.recipes.ratio')}</caption>
          <thead><tr><th scope="col">{t('view.recipes.food')}</th><th scope="col" className={table['n']}>{t('view.recipes.weight')}</th><th scope="col" className={table['n']}>{t('view.recipes.percent')}</th></tr></thead>
          <tbody>
            {ratioRows(recipe, base).map((row) => (
              <tr key={row.ingredient} data-ratio={row.ingredient}>
                <td>{nameIn(recipe, row.ingredient)}</td>
                <td className={table['n']}>{row.grams === null ? '–' : <FigureButton figure={row.grams} title={`${nameIn(recipe, row.ingredient)}: ${t('view.recipes.weight')}`}>{`${t.formats.number(row.grams.value, row.grams.value < 10 ? 1 : 0)} g`}</FigureButton>}</td>
                <td className={table['n']}>{row.percent === null ? '–' : <FigureButton figure={row.percent} title={`${nameIn(recipe, row.ingredient)}: ${t('view.recipes.percent')}`}>{`${t.formats.number(row.percent.value, row.percent.value < 10 ? 1 : 0)} %`}</FigureButton>}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </ViewSection>
  );
}
