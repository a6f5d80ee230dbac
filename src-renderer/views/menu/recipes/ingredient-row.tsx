import type { IngredientLine } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { ingredientName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { NumberField } from '../../../parts/number-field';
import { AmountField } from './amount-field';
import { FoodChoice } from './food-choice';
import { RowButtons } from './row-buttons';
import { WordsField } from './words-field';
import styles from './recipes.module.css';

interface IngredientRowProps {
  readonly list: readonly IngredientLine[];
  readonly at: number;
  readonly line: IngredientLine;
  readonly isFried: boolean;
  readonly put: (list: IngredientLine[]) => Message | null;
}

const scalings = ['linear', 'fixed', 'perBatch', 'damped'] as const;
type Scaling = (typeof scalings)[number];
/** What "less than in step" starts from (our choice; common practice for spice and salt, no source). */
const firstExponent = 0.9;

/** The line with these words beside its food; without any, the field goes. */
function prepared(line: IngredientLine, words: string): IngredientLine {
  if (words !== '') return { ...line, preparation: words };
  const { preparation: _, ...rest } = line;
  return rest;
}

/** One ingredient with its fields. */
export function IngredientRow({ list, at, line, isFried, put }: IngredientRowProps) {
  const t = useSpeaker();
  const name = ingredientName(line.ingredient);
  const set = (next: IngredientLine): Message | null => put(list.map((one, i) => (i === at ? next : one)));
  const scaled = (kind: Scaling): IngredientLine => ({ ...line, scaling: kind === 'damped' ? { kind, exponent: firstExponent } : { kind } });
  const { scaling } = line;
  return (
    <tr data-line={at}>
      <td className={styles['amount']}><AmountField label={`${name}: ${t('view.recipes.amount')}`} bare value={line.amount} bareUnit={line.amount.unit} onCommit={(amount) => set({ ...line, amount: { ...amount } })} /></td>
      <td className={styles['food']}><FoodChoice label={`${name}: ${t('view.recipes.food')}`} bare value={line.ingredient} onCommit={(ingredient) => { set({ ...line, ingredient }); }} /></td>
      <td className={styles['words']}><WordsField label={`${name}: ${t('view.recipes.preparation')}`} bare value={line.preparation ?? ''} onCommit={(words) => set(prepared(line, words))} /></td>
      <td>
        <div className={styles['scaling']}>
          <Choice label={`${name}: ${t('view.recipes.scaling')}`} bare value={scaling.kind} onCommit={(kind) => set(scaled(kind))} options={scalings.map((value) => ({ value, text: t(`view.recipes.scaling.${value}`) }))} />
          {scaling.kind === 'damped' && <NumberField label={`${name}: ${t('view.recipes.exponent')}`} bare value={scaling.exponent} min={0.3} max={1} step={0.05} decimals={2} onCommit={(exponent) => set({ ...line, scaling: { kind: 'damped', exponent } })} />}
        </div>
      </td>
      {isFried && <td><input type="checkbox" className={styles['tick']} aria-label={`${name}: ${t('view.recipes.perBowl')}`} checked={line.perBowl} onChange={(e) => { set({ ...line, perBowl: e.currentTarget.checked }); }} /></td>}
      <td><RowButtons list={list} at={at} name={name} isLast={list.length === 1} put={put} /></td>
    </tr>
  );
}
