import type { Message } from '../../shared/words';
import { useState } from 'react';
import { useSpeaker } from '../app/speak';
import { Field } from './field';
import styles from './fields.module.css';

interface ChoiceProps<V extends string> {
  readonly label: string;
  readonly bare?: boolean;
  readonly value: V;
  readonly options: readonly { readonly value: V; readonly text: string }[];
  /** What is wrong beyond the choice itself: nothing was chosen. */
  readonly error?: string | null;
  readonly onCommit: (value: V) => Message | null;
}

/** One of a few. */
export function Choice<V extends string>({ label, bare = false, value, options, error = null, onCommit }: ChoiceProps<V>) {
  const t = useSpeaker();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <Field label={label} bare={bare} error={problem ?? error}>
      {({ id, describedBy, invalid }) => (
        <select
          id={id} className={styles['select']} value={value} aria-invalid={invalid} aria-describedby={describedBy}
          onChange={(e) => {
            const chosen = options.find((o) => o.value === e.currentTarget.value);
            if (chosen === undefined) return;
            const answer = onCommit(chosen.value);
            setProblem(answer === null ? null : t.message(answer));
          }}
        >
          {options.map((o) => <option key={o.value} value={o.value}>{o.text}</option>)}
        </select>
      )}
    </Field>
  );
}
