import type { ReactNode } from 'react';
import type { Figure } from '../../shared/figure';
import { useSpeaker } from '../app/speak';
import { useOpens } from '../app/working';
import { Mark } from './mark';
import styles from './figure-button.module.css';

interface FigureButtonProps {
  readonly figure: Figure;
  /** What the number is: the panel's heading and, with the number, the button's name. */
  readonly title: string;
  /** Text shown; the figure with its unit when absent. */
  readonly children?: ReactNode;
  /** Value before the last edit as shown text; struck behind the new one when it differs. */
  readonly was?: string | undefined;
  readonly size?: 'body' | 'large';
}

/** A number that opens its working. Every number a person sees is one. */
export function FigureButton({ figure, title, children, was, size = 'body' }: FigureButtonProps) {
  const t = useSpeaker();
  const { id, isOpen, toggle } = useOpens(title, figure, typeof children === 'string' ? children : undefined);
  const text = t.formats.figure(figure.value, figure.unit);
  return (
    <button
      id={id} type="button" onClick={toggle} aria-expanded={isOpen} title={t('part.showWorking')}
      className={`${styles['button']} ${styles[size]} ${size === 'large' && typeof children === 'string' && children.length > 9 ? styles['long'] : ''} ${was === undefined ? '' : styles['changed']}`}
      data-figure-value={figure.value} data-figure-unit={figure.unit} data-figure-title={title}
    >
      <span className="unseen">{title}: </span>
      <span className={styles['value']}>{children ?? text}</span>
      {was !== undefined && <> <span className={styles['mark']}><Mark kind="changed" /></span><s className={styles['was']}><span className="unseen">{t('part.was')} </span>{was}</s></>}
    </button>
  );
}
