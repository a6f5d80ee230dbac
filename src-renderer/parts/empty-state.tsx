import type { ReactNode } from 'react';
import styles from './empty-state.module.css';

/** What a view says when there is nothing to show yet, and what to do about it. */
export function EmptyState({ title, children, action }: { readonly title: string; readonly children?: ReactNode; readonly action?: ReactNode }) {
  return (
    <div className={styles['empty']}>
      <h2>{title}</h2>
      {children !== undefined && <p>{children}</p>}
      {action}
    </div>
  );
}
