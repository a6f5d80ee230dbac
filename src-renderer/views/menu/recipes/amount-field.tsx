import { readAmount } from '../../../../shared/exchange';
import type { AmountText, UnitId } from '../../../../shared/measure';
import type { Message } from '../../../../shared/words';
import { useSpeaker, type Speaker } from '../../../app/speak';
import { useDraft } from '../../../parts/draft';
import { Field } from '../../../parts/field';
import fields from '../../../parts/fields.module.css';

/** An amount as it stands in a field: to three decimals, with its unit in words. */
export function amountEntry(t: Speaker, { amount, unit }: AmountText): string {
  const value = Number(amount);
  return `${String(Number(value.toFixed(3)))} ${t.loose(`unit.${unit}`, { count: value })}`;
}

interface AmountFieldProps {
  readonly label: string;
  readonly bare?: boolean;
  readonly value: AmountText | null;
  /** Unit of a number typed without one. */
  readonly bareUnit?: UnitId;
  /** What is wrong with it beyond being no amount. */
  readonly problem?: string | null;
  readonly onCommit: (value: AmountText) => Message | null;
}

/** Amount and unit in one field, as a cook writes them: "2.4 kg", "1½ cups". */
export function AmountField({ label, bare = false, value, bareUnit, problem = null, onCommit }: AmountFieldProps) {
  const t = useSpeaker();
  const draft = useDraft<AmountText>(value === null ? '' : amountEntry(t, value), (text) => {
    const read = readAmount(text, bareUnit);
    return read === null ? { ok: false, problem: t('view.recipes.notAnAmount', { label, got: text.trim() }) } : { ok: true, value: read };
  }, onCommit);
  return (
    <Field label={label} bare={bare} error={draft.error ?? problem}>
      {({ id, describedBy, invalid }) => (
        <span className={fields['box']}>
          <input {...draft.input} id={id} className={fields['input']} type="text" autoComplete="off" maxLength={60} aria-invalid={invalid} aria-describedby={describedBy} />
        </span>
      )}
    </Field>
  );
}
