import { useId, useState, type ReactNode } from 'react';
import styles from './fold.module.css';

/** A part of the recipe that stays shut until it is wanted: its name, what it says in one line, and its fields once opened. */
export function Fold({ title, summary, isOpen = false, children }: { readonly title: string; readonly summary: string; readonly isOpen?: boolean; readonly children: ReactNode }) {
  const id = useId();
  const [open, setOpen] = useState(isOpen);
  return (
    <section className={styles['fold']} aria-label={title}>
      <h3 className={styles['foldHead']}>
        <button type="button" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true"><path d={open ? 'M1 3.5h10L6 9.5z' : 'M3.5 1v10l6-5z'} /></svg>
          {title}
        </button>
      </h3>
      <p className={styles['foldSays']}>{summary}</p>
      {open && <div id={id} className={styles['foldBody']}>{children}</div>}
    </section>
  );
}
