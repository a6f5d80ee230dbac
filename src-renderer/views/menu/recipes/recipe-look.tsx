import type { Recipe } from '../../../../shared/event';
import { lineName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import styles from './recipes.module.css';

/** A recipe to look at before it is chosen: what it makes, what goes in, its steps. As it is written, at its own size. */
export function RecipeLook({ recipe }: { readonly recipe: Recipe }) {
  const t = useSpeaker();
  return (
    <div className={styles['look']} data-look={recipe.id}>
      <p>{t('view.recipes.lookMakes', { amount: t.formats.amount(recipe.yield.amount), portions: recipe.yield.portions })}</p>
      <ul>
        {recipe.ingredients.map((line, at) => (
          <li key={`${at} ${line.ingredient}`}>{t.formats.amount(line.amount)} {lineName(line).toLowerCase()}{line.preparation === undefined ? '' : `, ${line.preparation}`}</li>
        ))}
      </ul>
      {recipe.steps.length > 0 && <ol>{recipe.steps.map((step) => <li key={step.id}>{step.name}</li>)}</ol>}
    </div>
  );
}
