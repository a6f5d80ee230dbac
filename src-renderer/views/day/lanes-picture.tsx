import type { Plan } from '../../../shared/plan';
import { mustNotSlip } from '../../../shared/sheets';
import type { Task } from '../../../shared/timeline';
import { useNow } from '../../app/now';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import { fittingLabel } from './fitting-label';
import { lanesOf, type HelperLane } from './lanes';
import styles from './day.module.css';

const rowHeight = 26;
const laneGap = 12;
const laneHeight = (lane: HelperLane): number => Math.max(1, lane.rows.length) * rowHeight + laneGap;

interface PictureProps {
  readonly plan: Plan;
  readonly from: number;
  readonly to: number;
  readonly chosen: string | null;
  readonly onChoose: (task: string) => void;
}

/** Every helper on one clock; a block is a job, a press shows it in the list. The list below carries the same jobs for the keyboard and the screen reader. */
export function LanesPicture({ plan, from, to, chosen, onChoose }: PictureProps) {
  const t = useSpeaker();
  const now = useNow(plan.event.day);
  const lanes = lanesOf(plan, from, to, { itself: t('view.day.byItself'), nobody: t('view.day.nobody') });
  const height = lanes.reduce((sum, lane) => sum + laneHeight(lane), 0);
  return (
    <ClockPicture from={from} to={to} height={height} gutter={112} right={36} label={t('view.day.lanes')}>
      {(scale) => {
        let top = 0;
        const block = (task: Task, y: number) => {
          const x = scale.x(Math.max(from, task.start));
          const width = Math.max(3, scale.x(Math.min(to, task.end)) - x - 1);
          const name = t.message(task.name);
          const words = t('view.day.block', { job: name, from: task.start, to: task.end });
          const label = fittingLabel(task.kind === 'step' ? [name, name.slice(name.indexOf(': ') + 2)] : [name], width - 10);
          return (
            <g key={task.id} className={styles['block']} data-part={task.attention > 0 && task.attention < 1} data-chosen={task.id === chosen} onClick={() => onChoose(task.id)}>
              <title>{words}</title>
              <rect x={x} y={y} width={width} height={rowHeight - 4} />
              {mustNotSlip(task) && <rect x={x} y={y} width={3} height={rowHeight - 4} className={styles['edge']} />}
              {label !== null && <text x={x + 6} y={y + 16}>{label}</text>}
            </g>
          );
        };
        return (
          <>
            <defs>
              <pattern id="part-attention" width="6" height="6" patternUnits="userSpaceOnUse"><path d="M0 6 L6 0" className={styles['hatch']} /></pattern>
            </defs>
            {lanes.map((lane) => {
              const y = top;
              top += laneHeight(lane);
              return (
                <g key={lane.id} data-lane-kind={lane.kind}>
                  <line x1={-112} x2={scale.width} y1={y + laneHeight(lane) - laneGap / 2} y2={y + laneHeight(lane) - laneGap / 2} className={styles['under']} />
                  <text x={-12} y={y + 17} textAnchor="end" className={styles['laneName']}>{lane.name}</text>
                  {lane.rows.map((row, i) => row.map((task) => block(task, y + i * rowHeight)))}
                </g>
              );
            })}
            {now !== null && now >= from && now <= to && <line x1={scale.x(now)} x2={scale.x(now)} y1={0} y2={height} className={styles['now']} />}
          </>
        );
      }}
    </ClockPicture>
  );
}
