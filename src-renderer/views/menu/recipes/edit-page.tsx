import { useState } from 'react';
import { changeRecipe, removeRecipe, type EditResult } from '../../../../shared/edit';
import { useDocument } from '../../../app/document';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { ViewPage, ViewSection } from '../../../parts/view-page';
import { AboutSection } from './about-section';
import { Basics } from './basics';
import { BrewingSection } from './brewing-section';
import { FryingSection } from './frying-section';
import { IngredientTable } from './ingredient-table';
import { KeepButton } from './keep-button';
import type { GoTo } from './page';
import { duplicateRecipe } from './put-on-menu';
import { RatioSection } from './ratio-section';
import { StepTable } from './step-table';
import styles from './recipes.module.css';

/** A recipe of the event, every part of it to change. Each change is one step of undo and the plan follows at once. */
export function EditPage({ id, go }: { readonly id: string; readonly go: GoTo }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const [refused, setRefused] = useState<string | null>(null);
  const recipe = event.recipes.find((own) => own.id === id);
  const back = <Button onPress={() => go(null)}>{t('view.recipes.back')}</Button>;
  if (recipe === undefined) return <ViewPage title={t('view.recipes.edit')} actions={back}>{null}</ViewPage>;
  const change = (patch: Parameters<typeof changeRecipe>[2]) => edit(changeRecipe(event, id, patch));
  const attempt = (result: EditResult): boolean => {
    const problem = edit(result);
    setRefused(problem === null ? null : t.message(problem));
    return problem === null;
  };
  const duplicate = (): void => {
    const second = duplicateRecipe(event, id, t('view.recipes.second', { name: recipe.name }).slice(0, 120));
    if (second !== null && attempt(second.result)) go({ kind: 'edit', recipe: second.id });
  };
  const dishes = plan.menu.dishes.filter((dish) => dish.recipe.id === id).map((dish) => dish.name);
  return (
    <ViewPage title={recipe.name} lead={t('view.recipes.editLead', { dishes: dishes.length === 0 ? '' : t.formats.list(dishes) })} actions={<>
      <KeepButton recipe={recipe} />
      <Button onPress={duplicate}>{t('view.recipes.duplicate')}</Button>
      <Button onPress={() => { if (attempt(removeRecipe(event, id))) go(null); }}>{t('view.recipes.remove')}</Button>
      {back}
    </>}>
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      <Basics recipe={recipe} change={change} />
      <ViewSection title={t('view.recipes.lines')}><IngredientTable recipe={recipe} change={change} /></ViewSection>
      <ViewSection title={t('view.recipes.steps')}><StepTable recipe={recipe} change={change} /></ViewSection>
      <FryingSection recipe={recipe} change={change} />
      <BrewingSection recipe={recipe} change={change} />
      <AboutSection recipe={recipe} change={change} />
      <RatioSection recipe={recipe} />
    </ViewPage>
  );
}
