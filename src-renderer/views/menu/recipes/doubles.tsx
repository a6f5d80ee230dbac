import { useState } from 'react';
import type { Recipe } from '../../../../shared/event';
import { doublesOf, type MergeChoice, type Shelf } from '../../../../shared/household';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { ViewSection } from '../../../parts/view-page';
import { sayProblem } from './say-problem';
import { joinOnShelf } from './shelf-store';
import styles from './recipes.module.css';

/** Recipes of the shelf that have one name: what tells them apart, and which to keep. Nothing when every name is its own. */
export function Doubles({ shelf }: { readonly shelf: Shelf }) {
  const t = useSpeaker();
  const [refused, setRefused] = useState<string | null>(null);
  const doubles = doublesOf(shelf);
  if (doubles.length === 0) return null;
  const says = ({ yield: made, ingredients, steps }: Recipe): string =>
    t('view.recipes.doubleSays', { makes: t.formats.amount(made.amount), portions: made.portions, lines: ingredients.length, steps: steps.length });
  const join = async (first: string, second: string, choice: MergeChoice): Promise<void> => {
    const problem = await joinOnShelf(first, second, choice);
    setRefused(problem === null ? null : sayProblem(t, problem));
  };
  const choices = [['ours', t('view.recipes.doubleMine')], ['theirs', t('view.recipes.doubleNew')], ['both', t('view.recipes.doubleBoth')]] as const;
  return (
    <ViewSection title={t('view.recipes.doubles')} lead={t('view.recipes.doublesLead')}>
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      <ul className={styles['doubles']}>
        {doubles.map(({ first, second, isSame }) => (
          <li key={second.id} data-double={second.id}>
            <strong>{second.name}</strong>
            <ol>
              <li>{says(first)}</li>
              <li>{isSame ? t('view.recipes.doubleSame') : says(second)}</li>
            </ol>
            <div className={styles['pair']}>
              {choices.map(([choice, what]) => <Button key={choice} label={t('view.recipes.doubleOf', { what, name: second.name })} onPress={() => void join(first.id, second.id, choice)}>{what}</Button>)}
            </div>
          </li>
        ))}
      </ul>
    </ViewSection>
  );
}
