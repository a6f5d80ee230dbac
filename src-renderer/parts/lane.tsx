import type { ReactNode } from 'react';
import { HourLines } from './clock-axis';
import { useTimeScale } from './time-scale';
import styles from './lane.module.css';

/** The five lanes of the clock. */
export type LaneKind = 'guests' | 'frying' | 'drinks' | 'meal' | 'hands';

interface LaneProps {
  readonly kind: LaneKind;
  readonly title: string;
  /** Lines under the title. */
  readonly notes?: readonly string[];
  /** Names of rows at their heights, right-aligned at the drawing's edge. */
  readonly rows?: readonly { readonly name: string; readonly note?: string; readonly y: number }[];
  readonly height: number;
  /** What the drawing says, for those who do not see it. */
  readonly summary: string;
  /** What the marks of the drawing mean, at its top right. */
  readonly legend?: string;
  readonly children: ReactNode;
  /** Controls laid over the drawing, in the same coordinates. */
  readonly over?: ReactNode;
}

/** One lane: a coloured spine with its name, and a drawing on the shared clock. */
export function Lane({ kind, title, notes = [], rows = [], height, summary, legend, children, over }: LaneProps) {
  const scale = useTimeScale();
  return (
    <section className={`${styles['lane']} ${styles[kind]}`} aria-label={title} data-lane={kind}>
      <div className={styles['head']} style={{ minHeight: height }}>
        <h2 className={styles['title']}>{title}</h2>
        {notes.map((note) => <p key={note} className={styles['note']}>{note}</p>)}
        {rows.map((row) => <span key={row.name + String(row.y)} className={styles['row']} style={{ top: row.y }} title={row.name}>{row.name}{row.note !== undefined && <em>{row.note}</em>}</span>)}
      </div>
      <div className={styles['drawing']} style={{ width: scale.width, height }}>
        <svg width={scale.width} height={height} role="img" aria-label={summary}>
          <HourLines height={height} />
          {children}
          {legend !== undefined && <text x={scale.width - 4} y={15} textAnchor="end" className={styles['legend']}>{legend}</text>}
        </svg>
        {over}
      </div>
    </section>
  );
}
