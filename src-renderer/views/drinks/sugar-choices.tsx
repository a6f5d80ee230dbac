import { isMadeAhead, sweetLines } from '../../../shared/drinks';
import { changeRecipe } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';

/** For each drink whose recipe has sugar: into the pot, or beside it for everybody to take. Nothing where no drink is sweetened. */
export function SugarChoices() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const sweetened = event.recipes.filter((r) => r.brewing !== undefined && sweetLines(r).length > 0 && !isMadeAhead(r) && event.menu.dishes.some((d) => d.recipe === r.id));
  return sweetened.map((recipe) => {
    const { brewing } = recipe;
    return brewing === undefined ? null : (
      <Choice key={recipe.id} label={t('view.drinks.sugarOf', { drink: recipe.name })} value={brewing.sugar ?? 'in'} onCommit={(sugar) => edit(changeRecipe(event, recipe.id, { brewing: { ...brewing, sugar } }))}
        options={[{ value: 'in', text: t('view.drinks.sugarIn') }, { value: 'apart', text: t('view.drinks.sugarApart') }]} />
    );
  });
}
