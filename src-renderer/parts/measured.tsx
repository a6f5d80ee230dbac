import type { ReactNode } from 'react';
import { useId, useState } from 'react';
import { Button } from './button';
import styles from './measured.module.css';

/** Fields of something the cook may measure: folded away until it is measured, with a line on how to do it. */
export function Measured({ title, how, open, children, forget }: { readonly title: string; readonly how: string; readonly open: boolean; readonly children: ReactNode; readonly forget?: { readonly text: string; readonly onPress: () => void } | undefined }) {
  const id = useId();
  const [shown, setShown] = useState(open);
  return (
    <div className={styles['measured']}>
      <button type="button" className={styles['title']} aria-expanded={shown} aria-controls={id} onClick={() => setShown(!shown)}>{title}</button>
      {shown && (
        <div id={id} role="group" aria-label={title}>
          <p className={styles['how']}>{how}</p>
          <div className={styles['fields']}>{children}</div>
          {forget !== undefined && <Button kind="link" onPress={forget.onPress}>{forget.text}</Button>}
        </div>
      )}
    </div>
  );
}
