import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import type { Sheet } from '../../../shared/sheets';
import { adoptPageRules } from './sheet-styles';
import styles from './sheets.module.css';
import './print.css';

/** Prints sheets from this page where the host has no print window of its own: they are in the page on paper only, and gone when the window is closed. */
export function PrintRoot({ sheets, onDone }: { readonly sheets: readonly Sheet[]; readonly onDone: () => void }) {
  useEffect(() => {
    const takeAway = adoptPageRules(sheets);
    document.body.dataset['printing'] = 'sheet';
    const done = (): void => onDone();
    window.addEventListener('afterprint', done, { once: true });
    window.print();
    return () => {
      window.removeEventListener('afterprint', done);
      delete document.body.dataset['printing'];
      takeAway();
    };
  }, [sheets, onDone]);
  return createPortal(
    <div data-print-root className={styles['printing']}>
      {sheets.map((sheet, at) => <div key={sheet.id} data-page={sheets.length === 1 ? undefined : `sheet${at + 1}`}>{sheet.body}</div>)}
    </div>,
    document.body,
  );
}
