import type { IngredientLine } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { lineName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { AmountField } from './amount-field';
import { FoodChoice } from './food-choice';
import { IngredientMore } from './ingredient-more';
import { RowButtons } from './row-buttons';
import { WordsField } from './words-field';
import styles from './recipes.module.css';

interface IngredientRowProps {
  readonly list: readonly IngredientLine[];
  readonly at: number;
  readonly line: IngredientLine;
  readonly isFried: boolean;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly put: (list: IngredientLine[]) => Message | null;
  readonly go: (at: number, by: -1 | 1) => void;
}

/** The line with these words beside its food; without any, the field goes. */
function prepared(line: IngredientLine, words: string): IngredientLine {
  if (words !== '') return { ...line, preparation: words };
  const { preparation: _, ...rest } = line;
  return rest;
}

/** The line with another food; what she called the one before goes with it. */
function ofFood(line: IngredientLine, food: string): IngredientLine {
  const { called: _, ...rest } = line;
  return { ...rest, ingredient: food };
}

/** One ingredient with its fields; how it follows the size is told in words and opens. */
export function IngredientRow({ list, at, line, isFried, isOpen, onToggle, put, go }: IngredientRowProps) {
  const t = useSpeaker();
  const name = lineName(line);
  const set = (next: IngredientLine): Message | null => put(list.map((one, i) => (i === at ? next : one)));
  const { scaling } = line;
  const grows = [
    scaling.kind === 'damped' ? t('view.recipes.dampedBy', { exponent: scaling.exponent }) : t(`view.recipes.scaling.${scaling.kind}`),
    ...(line.toTaste ? [t('view.recipes.toTaste')] : []), ...(line.perBowl ? [t('view.recipes.perBowl').toLowerCase()] : []),
  ].join('; ');
  return (
    <>
      <tr data-line={at} data-at={at}>
        <td className={styles['amount']}><AmountField label={`${name}: ${t('view.recipes.amount')}`} bare value={line.amount} bareUnit={line.amount.unit} onCommit={(amount) => set({ ...line, amount: { ...amount } })} /></td>
        <td className={styles['food']}><FoodChoice label={`${name}: ${t('view.recipes.food')}`} bare value={line.ingredient} own={{ id: line.ingredient, name }} onCommit={(ingredient) => { set(ofFood(line, ingredient)); }} /></td>
        <td className={styles['words']}><WordsField label={`${name}: ${t('view.recipes.preparation')}`} bare value={line.preparation ?? ''} onCommit={(words) => set(prepared(line, words))} /></td>
        <td className={styles['grows']}>
          <button type="button" className={styles['more']} aria-expanded={isOpen} aria-label={`${name}: ${t('view.recipes.scaling')}, ${grows}`} onClick={onToggle}>{grows}</button>
        </td>
        <td><RowButtons list={list} at={at} name={name} isLast={list.length === 1} put={put} go={go} /></td>
      </tr>
      {isOpen && <tr className={styles['opened']}><td colSpan={5}><IngredientMore line={line} name={name} isFried={isFried} set={set} /></td></tr>}
    </>
  );
}
