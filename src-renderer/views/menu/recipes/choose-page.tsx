import { useEffect, useRef, useState } from 'react';
import type { Recipe } from '../../../../shared/event';
import { useDocument } from '../../../app/document';
import { lineName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { ViewPage, ViewSection } from '../../../parts/view-page';
import { Doubles } from './doubles';
import { byRole, findRecipes } from './find-recipes';
import { blankRecipe, type GoTo } from './page';
import { PlainField } from './plain-field';
import { putOnMenu } from './put-on-menu';
import { RecipeLook } from './recipe-look';
import { useHouseholdShelf } from './shelf-store';
import { sayProblem } from './say-problem';
import styles from './recipes.module.css';

/** Every recipe there is to put on the menu: those of the event, then the household's by their place in the meal. */
export function ChoosePage({ go }: { readonly go: GoTo }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const { shelf, problem, isRead } = useHouseholdShelf();
  const [typed, setTyped] = useState('');
  const [refused, setRefused] = useState<string | null>(null);
  const [looked, setLooked] = useState<string | null>(null);
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => { box.current?.focus(); }, []);
  const wordsOf = (recipe: Recipe): string => `${t(`view.recipes.role.${recipe.role}`)} ${recipe.ingredients.map((line) => lineName(line)).join(' ')}`;
  const own = findRecipes(event.recipes, typed, wordsOf);
  const kept = findRecipes(shelf.recipes.filter((recipe) => !event.recipes.some((mine) => mine.id === recipe.id)), typed, wordsOf);
  const found = [...own, ...kept];
  const only = found.length === 1 ? found[0] : undefined;
  const put = (recipe: Recipe): void => {
    const answer = edit(putOnMenu(event, recipe));
    if (answer === null) go(null);
    else setRefused(t.message(answer));
  };
  const used = new Set(event.menu.dishes.map((dish) => dish.recipe));
  const add = (recipe: Recipe) => <Button kind="link" label={t('view.recipes.add', { name: recipe.name })} onPress={() => put(recipe)}>{recipe.name}</Button>;
  const look = ({ id, name }: Recipe) => (
    <button type="button" className={styles['lookAt']} aria-expanded={looked === id} aria-label={t('view.recipes.lookAt', { name })} onClick={() => setLooked(looked === id ? null : id)}>{t('view.recipes.look')}</button>
  );
  const shown = (recipe: Recipe) => looked === recipe.id && <RecipeLook recipe={recipe} />;
  return (
    <ViewPage title={t('view.recipes.choose')} lead={t('view.recipes.chooseLead')} actions={<>
      <Button onPress={() => go({ kind: 'paste' })}>{t('view.recipes.paste')}</Button>
      <Button onPress={() => go({ kind: 'settle', imported: { ...blankRecipe } })}>{t('view.recipes.new')}</Button>
      <Button onPress={() => go(null)}>{t('view.recipes.back')}</Button>
    </>}>
      <div className={styles['search']}>
        <PlainField label={t('view.recipes.search')} value={typed} box={box} onChange={setTyped} onEnter={() => { if (only !== undefined) put(only); }} />
        <p role="status" className={styles['note']}>{isRead ? t('view.recipes.found', { n: found.length }) : t('view.recipes.shelfReading')}</p>
      </div>
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      {problem !== null && <p className={styles['problem']} role="alert">{sayProblem(t, problem)}</p>}
      {own.length > 0 && (
        <ViewSection title={t('view.recipes.inEvent')}>
          <ul className={styles['recipes']}>
            {own.map((recipe) => (
              <li key={recipe.id}>
                {add(recipe)}{used.has(recipe.id) && <span className={styles['note']}>{t('view.recipes.onMenu')}</span>}
                {look(recipe)}
                <Button kind="link" label={t('view.recipes.editOf', { name: recipe.name })} onPress={() => go({ kind: 'edit', recipe: recipe.id })}>{t('view.recipes.change')}</Button>
                {shown(recipe)}
              </li>
            ))}
          </ul>
        </ViewSection>
      )}
      <Doubles shelf={shelf} />
      {kept.length > 0 && (
        <ViewSection title={t('view.recipes.shelfTitle')}>
          <div className={styles['groups']}>
            {byRole(kept).map(({ role, recipes }) => (
              <section key={role} className={styles['group']}>
                <h4>{t(`view.recipes.role.${role}`)}</h4>
                <ul>{recipes.map((recipe) => <li key={recipe.id}>{add(recipe)} {look(recipe)}{shown(recipe)}</li>)}</ul>
              </section>
            ))}
          </div>
        </ViewSection>
      )}
    </ViewPage>
  );
}
