import type { Message } from '../../../../shared/words';
import { useDraft } from '../../../parts/draft';
import { Field } from '../../../parts/field';
import fields from '../../../parts/fields.module.css';

/** A few words that may also be none, such as how a food is cut; with `lines`, a text of several lines, whose line breaks stay. */
export function WordsField({ label, bare = false, value, most = 200, lines = 1, error = null, onCommit }: { readonly label: string; readonly bare?: boolean; readonly value: string; readonly most?: number; readonly lines?: number; readonly error?: string | null; readonly onCommit: (value: string) => Message | null }) {
  const draft = useDraft<string>(value, (text) => ({ ok: true, value: text.trim() }), onCommit);
  return (
    <Field label={label} bare={bare} error={draft.error ?? error}>
      {({ id, describedBy, invalid }) => (
        <span className={fields['box']}>
          {lines === 1
            ? <input {...draft.input} id={id} className={fields['input']} type="text" autoComplete="off" maxLength={most} aria-invalid={invalid} aria-describedby={describedBy} />
            // Enter begins a new line here; leaving the field hands the text on.
            : <textarea {...draft.input} onKeyDown={(e) => { if (e.key === 'Escape') draft.drop(); }} id={id} className={fields['input']} rows={lines} maxLength={most} aria-invalid={invalid} aria-describedby={describedBy} />}
        </span>
      )}
    </Field>
  );
}
