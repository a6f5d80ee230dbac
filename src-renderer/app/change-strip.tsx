import { useDeferredValue, useState } from 'react';
import { largestChanges } from '../../shared/changes';
import { Mark } from '../parts/mark';
import { useDocument } from './document';
import { useFaultCount } from './faults';
import { useSession } from './session';
import { useSpeaker } from './speak';
import styles from './change-strip.module.css';

/** Along the foot: what the last edit was, its largest effects, and the way back. Also says when figures are not updated. */
export function ChangeStrip() {
  const t = useSpeaker();
  const { changes: newest, undoName, undo, readChanges, notUpdated } = useDocument();
  // Counting up what changed may wait for a pause in the drag.
  const late = useDeferredValue(newest);
  const changes = newest === null ? null : late;
  const faults = useFaultCount();
  const [allFor, setAllFor] = useState<unknown>(null);
  const { view } = useSession();
  // The long list belongs to the view it was opened on.
  const [shownOn, setShownOn] = useState(view);
  if (shownOn !== view) {
    setShownOn(view);
    setAllFor(null);
  }
  if (notUpdated || faults > 0) {
    return <div className={`${styles['strip']} ${styles['stale']}`} role="status"><strong><Mark kind="watch" /> {t('shell.notUpdated')}</strong><span>{t('shell.notUpdatedWhy', { n: faults })}</span></div>;
  }
  if (changes === null) return null;
  const list = changes.list;
  const all = allFor === changes;
  return (
    <div className={styles['strip']} role="status" data-change-strip>
      <strong className={styles['cause']}><Mark kind="changed" /> {t.message(changes.cause)}</strong>
      {list.length === 0 && <span>{t('shell.nothingElse')}</span>}
      {largestChanges(list).map((change, i) => <span key={`${i} ${change.about}`} className={styles['effect']}>{t.message(change.message)}</span>)}
      {list.length > 3 && <button type="button" className={styles['link']} aria-expanded={all} onClick={() => setAllFor(all ? null : changes)} onKeyDown={(e) => { if (e.key === 'Escape') setAllFor(null); }}>{t('shell.allChanges', { n: list.length })}</button>}
      <span className={styles['space']} />
      {undoName !== null && <button type="button" className={styles['link']} onClick={undo}>{t('shell.undoStep', { name: t.message(undoName) })}</button>}
      <button type="button" className={styles['close']} onClick={readChanges} aria-label={t('shell.changesRead')}>×</button>
      {all && (
        <ul className={styles['all']} data-all-changes>
          {list.map((change, i) => <li key={`${i} ${change.about}`}>{t.message(change.message)}</li>)}
        </ul>
      )}
    </div>
  );
}
