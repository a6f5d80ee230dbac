import { useSpeaker } from '../app/speak';
import { Mark } from './mark';
import styles from './problem.module.css';

interface ProblemProps {
  /** What is wrong. */
  readonly message: string;
  /** What to do. */
  readonly mend?: string | undefined;
  readonly level?: 'stop' | 'watch';
  readonly onClose?: () => void;
}

/** A problem of a file, the host or a view, said in a bar; nothing is blocked. */
export function Problem({ message, mend, level = 'stop', onClose }: ProblemProps) {
  const t = useSpeaker();
  return (
    <div className={`${styles['problem']} ${styles[level]}`} role="alert">
      <span className={styles['mark']}><Mark kind={level} /></span>
      <div><strong>{message}</strong>{mend !== undefined && (mend.includes('\n') ? <ul className={styles['list']}>{mend.split('\n').map((line) => <li key={line}>{line}</li>)}</ul> : <> {mend}</>)}</div>
      {onClose !== undefined && <button type="button" className={styles['close']} onClick={onClose} aria-label={t('part.close')}>×</button>}
    </div>
  );
}
