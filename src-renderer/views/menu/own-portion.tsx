import { changeDish } from '../../../shared/edit';
import { amountText } from '../../../shared/measure';
import { ownPortion, type DishPlan } from '../../../shared/menu';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import styles from './menu.module.css';

/** Decimals of a portion kept in the file. */
const decimals = 3;

/** The recipe's own portion where another is planned, with one press to take it. */
export function OwnPortionNote({ dish }: { readonly dish: DishPlan }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const entry = event.menu.dishes.find((d) => d.id === dish.id);
  const own = entry === undefined || dish.broughtBy !== undefined ? null : ownPortion(event, entry, dish.recipe);
  if (own === null) return null;
  const portion = amountText({ amount: own.recipe.amount.round(decimals), unit: own.recipe.unit });
  return (
    <p className={styles['note']} data-own-portion>
      {t('view.menu.recipePortion', { recipe: portion, planned: amountText(own.planned), role: t(`view.recipes.role.${dish.recipe.role}`) })}{' '}
      <Button kind="link" label={t('view.menu.useRecipePortionOf', { dish: dish.name })} onPress={() => { edit(changeDish(event, dish.id, { portion: { ...portion } })); }}>{t('view.menu.useRecipePortion')}</Button>
    </p>
  );
}
