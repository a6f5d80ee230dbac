import type { Message } from '../../shared/words';
import { useSpeaker } from '../app/speak';
import { useDraft } from './draft';
import { Field } from './field';
import styles from './fields.module.css';

interface TextFieldProps {
  readonly label: string;
  readonly bare?: boolean;
  readonly value: string;
  /** May be left empty. */
  readonly optional?: boolean;
  /** Letters at most. */
  readonly longest?: number;
  readonly onCommit: (value: string) => Message | null;
}

/** A short text such as a name. */
export function TextField({ label, bare = false, value, optional = false, longest = 120, onCommit }: TextFieldProps) {
  const t = useSpeaker();
  const draft = useDraft(value, (text) => (text.trim() === '' && !optional ? { ok: false, problem: t('field.empty', { label }) } : { ok: true, value: text.trim() }), onCommit);
  return (
    <Field label={label} bare={bare} error={draft.error}>
      {({ id, describedBy, invalid }) => (
        <span className={styles['box']}>
          <input {...draft.input} id={id} className={styles['input']} type="text" autoComplete="off" maxLength={longest} aria-invalid={invalid} aria-describedby={describedBy} />
        </span>
      )}
    </Field>
  );
}
