import type { RefObject } from 'react';
import { Field } from '../../../parts/field';
import fields from '../../../parts/fields.module.css';

interface PlainFieldProps {
  readonly label: string;
  readonly value: string;
  readonly error?: string | null;
  readonly most?: number;
  readonly onChange: (value: string) => void;
  readonly onEnter?: () => void;
  readonly box?: RefObject<HTMLInputElement | null>;
}

/** A text that is looked at only when the cook goes on: part of a page that is filled in as a whole. */
export function PlainField({ label, value, error = null, most = 120, onChange, onEnter, box }: PlainFieldProps) {
  return (
    <Field label={label} error={error}>
      {({ id, describedBy, invalid }) => (
        <span className={fields['box']}>
          <input id={id} ref={box} className={fields['input']} type="text" autoComplete="off" value={value} maxLength={most} aria-invalid={invalid} aria-describedby={describedBy}
            onChange={(e) => onChange(e.currentTarget.value)} onKeyDown={(e) => { if (e.key === 'Enter') onEnter?.(); }} />
        </span>
      )}
    </Field>
  );
}
