import type { Message } from '../../shared/words';
import { useSpeaker } from '../app/speak';
import { useDraft, type Reading } from './draft';
import { Field } from './field';
import styles from './fields.module.css';

interface NumberFieldProps {
  readonly label: string;
  readonly bare?: boolean;
  readonly value: number | null;
  readonly unit?: string;
  readonly min: number;
  readonly max: number;
  /** How far one press of plus, minus or an arrow key goes. */
  readonly step?: number;
  readonly decimals?: number;
  /** Plus and minus buttons are drawn. */
  readonly buttons?: boolean;
  /** An empty field is allowed and means "not known". */
  readonly onClear?: () => Message | null;
  /** Takes the value; answers what is wrong with it, or null. */
  readonly onCommit: (value: number) => Message | null;
}

/** A number field. Commits on leaving it or on Enter; a wrong number stays as typed with the reason beside it. */
export function NumberField({ label, bare = false, value, unit, min, max, step = 1, decimals = 0, buttons = false, onClear, onCommit }: NumberFieldProps) {
  const t = useSpeaker();
  const shown = value === null ? '' : String(Number(value.toFixed(decimals)));
  const read = (text: string): Reading<number | null> => {
    const trimmed = text.replaceAll(/[\s ]/g, '').replace('−', '-').replace(',', '.');
    if (trimmed === '' && onClear !== undefined) return { ok: true, value: null };
    const number = Number(trimmed);
    if (trimmed === '' || !Number.isFinite(number)) return { ok: false, problem: t('field.notANumber', { label, min, max }) };
    if (number < min) return { ok: false, problem: t('field.tooSmall', { label, value: number, min }) };
    if (number > max) return { ok: false, problem: t('field.tooLarge', { label, value: number, max }) };
    if (decimals === 0 && !Number.isInteger(number)) return { ok: false, problem: t('field.notWhole', { label, value: number }) };
    return { ok: true, value: number };
  };
  const draft = useDraft(shown, read, (next) => (next === null ? (onClear?.() ?? null) : onCommit(next)));
  const nudge = (by: number): void => {
    const from = Number(draft.input.value);
    const next = Math.min(max, Math.max(min, (Number.isFinite(from) ? from : (value ?? min)) + by));
    draft.take(String(Number(next.toFixed(decimals))));
  };
  return (
    <Field label={label} bare={bare} error={draft.error} kind="number">
      {({ id, describedBy, invalid }) => (
        <span className={styles['box']}>
          <input
            {...draft.input} id={id} className={styles['input']} type="text" inputMode="decimal" autoComplete="off" role="spinbutton"
            aria-valuenow={value ?? undefined} aria-valuemin={min} aria-valuemax={max} aria-invalid={invalid} aria-describedby={describedBy}
            onKeyDown={(e) => {
              if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
                e.preventDefault();
                nudge((e.key === 'ArrowUp' ? step : -step) * (e.shiftKey ? 10 : 1));
              } else draft.input.onKeyDown(e);
            }}
          />
          {unit !== undefined && <span className={styles['unit']} aria-hidden="true">{unit}</span>}
          {buttons && <button type="button" tabIndex={-1} className={styles['step']} aria-label={t('field.less', { label })} onClick={() => nudge(-step)}>−</button>}
          {buttons && <button type="button" tabIndex={-1} className={styles['step']} aria-label={t('field.more', { label })} onClick={() => nudge(step)}>+</button>}
        </span>
      )}
    </Field>
  );
}
