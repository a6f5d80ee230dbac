import type { Message } from '../../../shared/words';
import { useState } from 'react';
import { useSpeaker } from '../../app/speak';
import { Field } from '../../parts/field';
import fields from '../../parts/fields.module.css';

/** A day that may be left open; an empty field is any day. */
export function DayField({ label, value, onCommit }: { readonly label: string; readonly value: string; readonly onCommit: (day: string) => Message | null }) {
  const t = useSpeaker();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <Field label={label} bare={false} error={problem}>
      {({ id, describedBy, invalid }) => (
        <span className={fields['box']}>
          <input id={id} className={fields['input']} type="date" value={value} aria-invalid={invalid} aria-describedby={describedBy}
            onChange={(e) => { const answer = onCommit(e.currentTarget.value); setProblem(answer === null ? null : t.message(answer)); }} />
        </span>
      )}
    </Field>
  );
}
