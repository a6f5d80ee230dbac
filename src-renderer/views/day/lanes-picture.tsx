import { useRef, type KeyboardEvent } from 'react';
import { mustNotSlip } from '../../../shared/sheets';
import type { Task } from '../../../shared/timeline';
import { useDocument } from '../../app/document';
import { useNow } from '../../app/now';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import { fittingLabel } from './fitting-label';
import { standsAtOil } from './job-ref';
import type { DayLane } from './lanes';
import type { useJobMoves } from './use-job-moves';
import styles from './day.module.css';

const rowHeight = 32;
const laneGap = 12;
const laneHeight = (lane: DayLane): number => Math.max(1, lane.rows.length) * rowHeight + laneGap;

interface PictureProps {
  readonly lanes: readonly DayLane[];
  readonly from: number;
  readonly to: number;
  readonly chosen: string | null;
  readonly onChoose: (task: string) => void;
  readonly moves: ReturnType<typeof useJobMoves>;
}

/** The helper whose lane lies at a height of the screen. */
export function laneAtHeight(box: Element | null, clientY: number): string | null {
  const found = [...(box?.querySelectorAll('[data-lane-kind="person"]') ?? [])].find((g) => { const r = g.getBoundingClientRect(); return clientY >= r.top && clientY <= r.bottom; });
  return found?.getAttribute('data-lane') ?? null;
}

/** A press this near a block is meant for it, in pixels: a five-minute job is drawn thinner than a finger. */
const nearPx = 22;

/** The block of a lane that lies nearest to a press, if it is near. */
function nearestTask(lane: Element, x: number, y: number): string | null {
  let best: { readonly id: string; readonly far: number } | null = null;
  for (const block of lane.querySelectorAll('[data-task] > rect:first-of-type')) {
    const r = block.getBoundingClientRect();
    const far = Math.hypot(Math.max(r.left - x, 0, x - r.right), Math.max(r.top - y, 0, y - r.bottom));
    const id = block.parentElement?.getAttribute('data-task') ?? null;
    if (id !== null && far <= nearPx && (best === null || far < best.far)) best = { id, far };
  }
  return best?.id ?? null;
}

/** Lanes on one clock; a block is a job. A press shows it below, a drag or the arrow keys move it or give it to somebody else. */
export function LanesPicture({ lanes, from, to, chosen, onChoose, moves }: PictureProps) {
  const t = useSpeaker();
  const { plan } = useDocument();
  const now = useNow(plan.event.day);
  const late = new Set(plan.day.overloads.flatMap((o) => [o.task, ...o.also]));
  // Things have longer names than people.
  const gutter = lanes.some((lane) => lane.kind === 'thing') ? 168 : 112;
  const height = lanes.reduce((sum, lane) => sum + laneHeight(lane), 0);
  const order = lanes.flatMap((lane) => lane.rows.flat()).toSorted((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  const keys = useRef<HTMLButtonElement>(null);
  const held = order.find((task) => task.id === chosen);
  const onKey = (e: KeyboardEvent): void => {
    const at = order.findIndex((task) => task.id === chosen);
    const task = order[at];
    const step = e.key === 'ArrowUp' || e.key === 'ArrowLeft' ? -1 : e.key === 'ArrowDown' || e.key === 'ArrowRight' ? 1 : 0;
    if (step === 0) return;
    e.preventDefault();
    if (task !== undefined && (e.key === 'ArrowLeft' || e.key === 'ArrowRight')) { moves.nudge(task, step * (e.shiftKey ? 30 : 5)); return; }
    if (task !== undefined && e.shiftKey) { moves.handOn(task, step); return; }
    const next = order[Math.min(order.length - 1, Math.max(0, at + step))];
    if (next !== undefined) onChoose(next.id);
  };
  return (
    <div className={styles['group']}>
      <button ref={keys} type="button" className={styles['keys']} aria-describedby="day-keys" onKeyDown={onKey}>
        {held === undefined ? t('view.day.keysNone') : t('view.day.keysAt', { at: held.start, job: t.message(held.name) })}
      </button>
      <output className="unseen" aria-live="polite">{held === undefined ? '' : t('view.day.said', { job: t.message(held.name), from: held.start, to: held.end, who: held.who.map((id) => plan.event.people.find((p) => p.id === id)?.name ?? id), late: late.has(held.id) })}</output>
      <ClockPicture from={from} to={to} height={height} gutter={gutter} right={36} label={t('view.day.lanes')}>
        {(scale) => {
          let top = 0;
          const block = (lane: DayLane, task: Task, y: number) => {
            const x = scale.x(Math.max(from, task.start));
            const width = Math.max(3, scale.x(Math.min(to, task.end)) - x - 1);
            const name = t.message(task.name);
            const words = t('view.day.block', { job: name, from: task.start, to: task.end });
            const label = fittingLabel(task.kind === 'step' ? [name, name.slice(name.indexOf(': ') + 2)] : [name], width - 10);
            return (
              <g
                key={`${lane.id} ${task.id}`} className={styles['block']} data-part={task.attention > 0 && task.attention < 1} data-chosen={task.id === chosen} data-task={task.id} data-kind={task.kind} data-held={task.held}
                data-late={late.has(task.id)} data-still={standsAtOil(task)} onClick={() => onChoose(task.id)}
                onPointerDown={(e) => { e.stopPropagation(); onChoose(task.id); moves.grab(task, scale)(e); }}
              >
                <title>{words}</title>
                <rect x={x} y={y} width={width} height={rowHeight - 4} />
                {mustNotSlip(task) && <rect x={x} y={y} width={3} height={rowHeight - 4} className={styles['edge']} />}
                {task.held !== undefined && <path d={`M${x + width - 7} ${y} h7 v7 z`} className={styles['pin']} />}
                {label !== null && <text x={x + 6} y={y + 19}>{label}</text>}
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
                  <g
                    key={lane.id} data-lane-kind={lane.kind} data-lane={lane.id} onPointerDown={(e) => {
                      const task = order.find((o) => o.id === nearestTask(e.currentTarget, e.clientX, e.clientY));
                      if (task === undefined) return;
                      onChoose(task.id);
                      moves.grab(task, scale)(e);
                    }} onClick={(e) => { if (nearestTask(e.currentTarget, e.clientX, e.clientY) !== null || (e.target instanceof Element && e.target.closest('[data-task]') !== null)) keys.current?.focus({ preventScroll: true }); }}
                  >
                    <rect x={0} y={y} width={scale.width} height={laneHeight(lane) - laneGap / 2} className={styles['laneArea']} />
                    <line x1={-gutter} x2={scale.width} y1={y + laneHeight(lane) - laneGap / 2} y2={y + laneHeight(lane) - laneGap / 2} className={styles['under']} />
                    <text x={-12} y={y + 20} textAnchor="end" className={styles['laneName']}>{lane.name}</text>
                    {lane.rows.map((row, i) => row.map((task) => block(lane, task, y + i * rowHeight)))}
                  </g>
                );
              })}
              {now !== null && now >= from && now <= to && <line x1={scale.x(now)} x2={scale.x(now)} y1={0} y2={height} className={styles['now']} />}
            </>
          );
        }}
      </ClockPicture>
    </div>
  );
}
