import type { Origin } from '../../shared/figure';
import { sourceTitle } from '../../shared/reference';
import { useSpeaker } from '../app/speak';
import { foodFigure } from './food-figure';
import styles from './working-panel.module.css';

/** Unit in which the tables give a figure of a food. */
const unitOf = (of: string): string => (of === 'density' ? 'g/ml' : of === 'ep' ? 'percent' : of === 'cooked' ? '' : 'g');

/** What other tables say of the same thing, and why the one used was chosen. Nothing where none disagrees. */
export function OtherTables({ origin }: { readonly origin: Origin }) {
  const t = useSpeaker();
  const found = foodFigure(origin);
  if (found === null || found.figure.other.length === 0) return null;
  const { of, figure } = found;
  const said = (value: number): string => t.formats.figure(Math.round(value * 1000) / 1000, unitOf(of));
  return (
    <span className={styles['source']} data-other-tables={figure.other.length}>
      {t('part.otherTables', { used: said(figure.value), others: figure.other.map((o) => t('part.tableSays', { value: said(o.value), source: sourceTitle(o.source)?.title ?? o.source })) })}
      {figure.note === undefined ? '' : ` ${figure.note}`}
    </span>
  );
}
