import { useState } from 'react';
import type { Recipe } from '../../../../shared/event';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { sayProblem } from './say-problem';
import { keepOnShelf, onShelf, useHouseholdShelf } from './shelf-store';
import styles from './recipes.module.css';

/** Keeps the recipe on the household's shelf, and says when it is there as it is. */
export function KeepButton({ recipe }: { readonly recipe: Recipe }) {
  const t = useSpeaker();
  const { shelf, isRead, modified } = useHouseholdShelf();
  const [refused, setRefused] = useState<string | null>(null);
  const stands = onShelf(shelf, recipe);
  const keep = async (choice: 'theirs' | 'both'): Promise<void> => {
    const problem = await keepOnShelf(recipe, choice);
    setRefused(problem === null ? null : sayProblem(t, problem));
  };
  // The recipes that come with the program are the household's own once it keeps a shelf.
  if (isRead && stands === 'same' && modified !== null) return <p className={styles['kept']} role="status">{t('view.recipes.kept')}</p>;
  return (
    <>
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      {stands === 'named' && <p className={styles['kept']}>{t('view.recipes.keepNamed')}</p>}
      <Button isDisabled={!isRead} onPress={() => void keep('theirs')}>{t(stands === 'other' || stands === 'named' ? 'view.recipes.keepOther' : 'view.recipes.keep')}</Button>
      {(stands === 'other' || stands === 'named') && <Button isDisabled={!isRead} onPress={() => void keep('both')}>{t('view.recipes.keepBoth')}</Button>}
    </>
  );
}
