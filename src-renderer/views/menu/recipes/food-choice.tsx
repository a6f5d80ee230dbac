import { ingredients } from '../../../../shared/reference';
import { ingredientName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Field } from '../../../parts/field';
import fields from '../../../parts/fields.module.css';

const all = ingredients.toSorted((a, b) => a.name.localeCompare(b.name, 'en'));
const known: ReadonlySet<string> = new Set(ingredients.map((one) => one.id));

const option = (id: string, name: string) => <option key={id} value={id}>{name}</option>;

interface FoodChoiceProps {
  readonly label: string;
  readonly bare?: boolean;
  /** Id of the food; empty when none is chosen. */
  readonly value: string;
  /** Foods that may be meant, likeliest first. */
  readonly likely?: readonly string[];
  /** A food of the cook's own that may be chosen, as she calls it. */
  readonly own?: { readonly id: string; readonly name: string };
  readonly problem?: string | null;
  readonly onCommit: (food: string) => void;
}

/** One food of the table, those that may be meant first; or one the table does not have. */
export function FoodChoice({ label, bare = false, value, likely = [], own, problem = null, onCommit }: FoodChoiceProps) {
  const t = useSpeaker();
  const other = [...new Set([own?.id ?? '', value])].filter((id) => id !== '' && !known.has(id));
  return (
    <Field label={label} bare={bare} error={problem}>
      {({ id, describedBy, invalid }) => (
        <select id={id} className={fields['select']} value={value} aria-invalid={invalid} aria-describedby={describedBy} onChange={(e) => { if (e.currentTarget.value !== '') onCommit(e.currentTarget.value); }}>
          {value === '' && <option value="">{t('view.recipes.foodChoose')}</option>}
          {likely.length > 0 && <optgroup label={t('view.recipes.foodMay')}>{likely.map((food) => option(food, ingredientName(food)))}</optgroup>}
          {other.length > 0 && <optgroup label={t('view.recipes.foodOther')}>{other.map((food) => option(food, t('view.recipes.foodOwn', { name: food === own?.id ? own.name : ingredientName(food) })))}</optgroup>}
          <optgroup label={t('view.recipes.foodAll')}>{all.filter((food) => !likely.includes(food.id)).map((food) => option(food.id, food.name))}</optgroup>
        </select>
      )}
    </Field>
  );
}
