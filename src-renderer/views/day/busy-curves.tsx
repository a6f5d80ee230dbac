import type { Plan } from '../../../shared/plan';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import type { TimeScale } from '../../parts/time-scale';
import { burnersOf, curveOf, type CurvePiece } from './thing-lanes';
import styles from './day.module.css';

const rowHeight = 54;
const curveHeight = 36;

interface Row { readonly id: string; readonly name: string; readonly pieces: readonly CurvePiece[]; readonly most: number }

const most = (pieces: readonly CurvePiece[]): number => Math.max(0, ...pieces.map((p) => p.used));

function Curve({ row, y, scale }: { readonly row: Row; readonly y: number; readonly scale: TimeScale }) {
  const t = useSpeaker();
  const top = Math.max(1, ...row.pieces.map((p) => Math.max(p.used, p.has)));
  const height = (n: number): number => y + curveHeight + 8 - (n / top) * curveHeight;
  const line = (of: (p: CurvePiece) => number): string => row.pieces.map((p, k) => `${k === 0 ? 'M' : 'V'}${k === 0 ? `${scale.x(p.at)} ${height(of(p))}` : height(of(p))} H${scale.x(row.pieces[k + 1]?.at ?? scale.to)}`).join(' ');
  const base = y + curveHeight + 8;
  return (
    <g data-curve={row.id}>
      <text x={-12} y={y + 24} textAnchor="end" className={styles['laneName']}>{row.name}</text>
      <text x={-12} y={y + 41} textAnchor="end" className={styles['curveNote']}>{t('view.day.curveMost', { most: Math.ceil(row.most - 1e-9), of: Math.max(0, ...row.pieces.map((p) => p.has)) })}</text>
      <path d={`${line((p) => p.used)} V${base} H${scale.x(row.pieces[0]?.at ?? scale.from)} Z`} className={styles['used']} />
      <path d={line((p) => p.has)} className={styles['has']} />
      <line x1={-110} x2={scale.width} y1={base} y2={base} className={styles['under']} />
    </g>
  );
}

/** How busy hands and burners are over the day, against what there is; the same clock as the lanes. */
export function BusyCurves({ plan, from, to, person, gutter }: { readonly plan: Plan; readonly from: number; readonly to: number; readonly person: string | null; readonly gutter: number }) {
  const t = useSpeaker();
  const { event, day } = plan;
  const people = event.people.filter((p) => person === null || p.id === person);
  const there = (at: number): number => people.filter((p) => p.from <= at && at < p.to).length;
  const hands = curveOf(day.tasks.filter((task) => task.kind !== 'rest'), from, to, (task) => task.attention * task.who.filter((w) => people.some((p) => p.id === w)).length, there, people.flatMap((p) => [p.from, p.to]));
  const burners = curveOf(day.tasks, from, to, burnersOf, () => event.kitchen.burners.length);
  const rows: Row[] = [
    ...(people.length > 0 ? [{ id: 'hands', name: person === null ? t('view.day.curveHands') : (people[0]?.name ?? ''), pieces: hands, most: most(hands) }] : []),
    ...(event.kitchen.burners.length > 0 && person === null ? [{ id: 'burners', name: t('view.day.curveBurners'), pieces: burners, most: most(burners) }] : []),
  ];
  if (rows.length === 0) return null;
  return (
    <ClockPicture from={from} to={to} height={rows.length * rowHeight} gutter={gutter} right={36} label={t('view.day.curves')}>
      {(scale) => rows.map((row, k) => <Curve key={row.id} row={row} y={k * rowHeight} scale={scale} />)}
    </ClockPicture>
  );
}
