import { useMemo } from 'react';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { OilEnd } from '../../../shared/frying';
import type { Plan } from '../../../shared/plan';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import styles from './frying.module.css';

const height = 170;
const barsFrom = 138;
/** What matters lies between these; warming up and cooling down run out of the picture. */
const shown = { from: 120, to: 190 } as const;
/** Room a number of pieces takes, in pixels. */
const numberRoom = 22;

/** Temperature of a pan's oil over the day, and under it the batches in that pan as bars with their pieces. */
export function OilPicture({ end, plan, pan }: { readonly end: OilEnd; readonly plan: Plan; readonly pan: string }) {
  const t = useSpeaker();
  const f = t.formats;
  const curve = useMemo(() => end.curve, [end]);
  const batches = plan.frying.batches.filter((b) => b.pan === end.pan);
  if (curve.celsius.length === 0) return null;
  const loads = plan.frying.loads.filter((l) => l.pan === end.pan).map((l) => plan.menu.dishes.find((d) => d.id === l.dish)?.recipe.frying?.targetC ?? 0);
  const target = Math.max(...loads);
  const y = scaleLinear().domain([shown.from, shown.to]).range([barsFrom - 10, 6]).clamp(true);
  const minutes = [...curve.celsius.entries()];
  return (
    <div className={styles['figure']}>
      <ClockPicture from={curve.fromMinute} to={curve.fromMinute + curve.celsius.length} height={height} label={t('view.frying.oilPicture', { pan, low: lowest(plan, end), target })}>
        {(scale) => {
          const path = line().defined(([, c]) => c >= shown.from).x(([i]) => scale.x(curve.fromMinute + i)).y(([, c]) => y(c));
          const wide = scale.x(curve.fromMinute + curve.celsius.length);
          return (
            <>
              {[120, 150, 180].map((n) => <g key={n}><line x1={0} x2={wide} y1={y(n)} y2={y(n)} className={styles['grid']} /><text x={-8} y={y(n)} dy="0.35em" textAnchor="end">{f.degrees(n)}</text></g>)}
              <line x1={0} x2={wide} y1={y(target)} y2={y(target)} className={styles['fresh']} />
              <path d={path(minutes) ?? ''} className={styles['lifted']} />
              {batches.map((b, i) => (
                <g key={b.number}>
                  <rect x={scale.x(b.dropAt)} width={Math.max(2, scale.x(b.liftAt) - scale.x(b.dropAt))} y={barsFrom} height={14} className={styles['bar']} />
                  {(i === 0 || scale.x(b.dropAt) - scale.x(batches[i - 1]?.dropAt ?? b.dropAt) > numberRoom) && <text x={scale.x(b.dropAt)} y={barsFrom + 28} className={styles['tiny']}>{f.number(b.pieces)}</text>}
                </g>
              ))}
            </>
          );
        }}
      </ClockPicture>
      <p className={styles['key']}>{t('view.frying.oilPictureKey', { target, low: lowest(plan, end) })}</p>
    </div>
  );
}

/** Lowest temperature while a batch is in the pan. */
function lowest(plan: Plan, { pan, curve }: OilEnd): number {
  const inPan = plan.frying.batches.filter((b) => b.pan === pan).flatMap((b) => curve.celsius.slice(b.dropAt - curve.fromMinute, b.liftAt - curve.fromMinute));
  return Math.min(...inPan);
}
