import { useMemo } from 'react';
import { scaleLinear } from 'd3-scale';
import { area, curveStepAfter, line } from 'd3-shape';
import type { Plan } from '../../../shared/plan';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import { supplyOf, type Total } from './supply';
import styles from './frying.module.css';

const height = 260;

const totalAt = (list: readonly Total[], minute: number): number => list.findLast((p) => p.at <= minute)?.pieces ?? 0;

/** Totals at the same minutes, so that two step lines can bound an area. */
function corridor(lower: readonly Total[], upper: readonly Total[]): readonly { readonly at: number; readonly low: number; readonly high: number }[] {
  return [...new Set([...lower, ...upper].map((p) => p.at))].sort((a, b) => a - b).map((minute) => ({ at: minute, low: totalAt(lower, minute), high: totalAt(upper, minute) }));
}

/** What is lifted out, as steps, inside the corridor between what is wanted by now and what still stays fresh. */
export function SupplyPicture({ dish, plan, name }: { readonly dish: string; readonly plan: Plan; readonly name: string }) {
  const t = useSpeaker();
  const supply = useMemo(() => supplyOf(plan, dish), [plan, dish]);
  if (supply === null || supply.lifted.length < 3) return null;
  const y = scaleLinear().domain([0, supply.most]).nice(4).range([height - 2, 8]);
  return (
    <div className={styles['figure']}>
      <ClockPicture from={supply.from} to={supply.to} height={height} label={t('view.frying.picture', { dish: name })}>
        {(scale) => {
          const path = line<Total>().x((p) => scale.x(p.at)).y((p) => y(p.pieces)).curve(curveStepAfter);
          const between = area<ReturnType<typeof corridor>[number]>().x((p) => scale.x(p.at)).y0((p) => y(p.low)).y1((p) => y(p.high)).curve(curveStepAfter);
          const end = scale.x(supply.to);
          const label = (points: readonly Total[]): number => y(points.at(-1)?.pieces ?? 0);
          return (
            <>
              {y.ticks(4).map((n) => <g key={n}><line x1={0} x2={end} y1={y(n)} y2={y(n)} className={styles['grid']} /><text x={-8} y={y(n)} dy="0.35em" textAnchor="end">{t.formats.number(n)}</text></g>)}
              <path d={between(corridor(supply.wanted, supply.fresh)) ?? ''} className={styles['corridor']} />
              <path d={path(supply.fresh) ?? ''} className={styles['fresh']} />
              <path d={path(supply.wanted) ?? ''} className={styles['wanted']} />
              <path d={path(supply.lifted) ?? ''} className={styles['lifted']} />
              <text x={scale.x(middle(supply.fresh)) - 8} y={y(half(supply.fresh))} textAnchor="end">{t('view.frying.fresh')}</text>
              <text x={scale.x(middle(supply.wanted)) + 8} y={y(half(supply.wanted)) + 18}>{t('view.frying.wanted')}</text>
              <text x={end - 4} y={label(supply.lifted) - 6} textAnchor="end" className={styles['strong']}>{t('view.frying.lifted')}</text>
            </>
          );
        }}
      </ClockPicture>
      <p className={styles['key']}>{t('view.frying.pictureKey', { hold: supply.holdMinutes })}</p>
    </div>
  );
}

/** Where a running total passes its half: the place of its label. */
function halfway(points: readonly Total[]): Total | undefined {
  const total = points.at(-1)?.pieces ?? 0;
  return points.find((p) => p.pieces >= total / 2);
}
const middle = (points: readonly Total[]): number => halfway(points)?.at ?? 0;
const half = (points: readonly Total[]): number => halfway(points)?.pieces ?? 0;
