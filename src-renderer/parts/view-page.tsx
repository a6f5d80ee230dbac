import { useEffect, useRef, type ReactNode } from 'react';
import styles from './view-page.module.css';

/** A view: its name, a line about it, what can be done with it at the right, and its sections. */
export function ViewPage({ title, lead, actions, children }: { readonly title: string; readonly lead?: ReactNode; readonly actions?: ReactNode; readonly children: ReactNode }) {
  const top = useRef<HTMLDivElement>(null);
  // A view is opened at its top, wherever the one before was left.
  useEffect(() => { top.current?.closest('main')?.scrollTo(0, 0); }, []);
  return (
    <div ref={top} className={styles['page']}>
      <header className={styles['head']}>
        <div>
          <h2 className={styles['title']}>{title}</h2>
          {lead !== undefined && <p className={styles['lead']}>{lead}</p>}
        </div>
        {actions !== undefined && <div className={styles['actions']}>{actions}</div>}
      </header>
      {children}
    </div>
  );
}

/** A part of a view. `lane` draws the spine of that lane at its left edge. */
export function ViewSection({ title, lead, lane, children }: { readonly title: string; readonly lead?: ReactNode; readonly lane?: 'frying' | 'drinks' | 'meal' | 'hands'; readonly children: ReactNode }) {
  return (
    <section className={`${styles['section']} ${lane === undefined ? '' : `${styles['spined']} ${styles[lane]}`}`}>
      <h3 className={styles['heading']}>{title}</h3>
      {lead !== undefined && <p className={styles['note']}>{lead}</p>}
      {children}
    </section>
  );
}

/** Figures side by side, each under its name. */
export function Facts({ children }: { readonly children: ReactNode }) {
  return <dl className={styles['facts']}>{children}</dl>;
}

/** One figure under its name, with a note. */
export function Fact({ name, note, children }: { readonly name: string; readonly note?: ReactNode; readonly children: ReactNode }) {
  return (
    <div className={styles['fact']}>
      <dt>{name}</dt>
      <dd>{children}{note !== undefined && <span className={styles['note']}> {note}</span>}</dd>
    </div>
  );
}
