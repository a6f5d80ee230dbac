import { useId, type ReactNode } from 'react';
import { useFault } from '../app/faults';
import { useSpeaker } from '../app/speak';
import styles from './fields.module.css';

interface FieldProps {
  readonly label: string;
  /** The label is read out but not drawn, as in a table whose column head says it. */
  readonly bare?: boolean;
  readonly error: string | null;
  readonly kind?: 'number' | 'time' | 'text';
  /** Draws the control; gets the ids that tie it to its label and its error. */
  readonly children: (ids: { readonly id: string; readonly describedBy: string | undefined; readonly invalid: boolean }) => ReactNode;
}

/** Label, control, and beside it what is wrong with the entry. */
export function Field({ label, bare = false, error, kind = 'text', children }: FieldProps) {
  const id = useId();
  const t = useSpeaker();
  useFault(error !== null);
  return (
    <div className={`${styles['field']} ${styles[kind] ?? ''} ${error === null ? '' : styles['wrong']}`}>
      <label htmlFor={id} className={bare ? 'unseen' : styles['label']}>{label}</label>
      {children({ id, describedBy: error === null ? undefined : `${id}-error`, invalid: error !== null })}
      {error !== null && <span id={`${id}-error`} className={styles['error']} role="alert"><span className="unseen">{t('field.errorPrefix')} </span>{error}</span>}
    </div>
  );
}
