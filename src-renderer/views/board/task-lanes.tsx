import { memo } from 'react';
import type { Task } from '../../../shared/timeline';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Lane } from '../../parts/lane';
import { useTimeScale, type TimeScale } from '../../parts/time-scale';
import { burnersOf, curveOf } from '../day/thing-lanes';
import { useDensity } from './density';
import { fitted, rowsOf } from './rows';
import styles from './board.module.css';

const mostMealRows = 3;

const shown = (scale: TimeScale) => (task: Task): boolean => task.end > scale.from && task.start < scale.to;

function Bar({ task, y, height, kind }: { readonly task: Task; readonly y: number; readonly height: number; readonly kind: 'meal' | 'hands' }) {
  const t = useSpeaker();
  const scale = useTimeScale();
  const x = Math.max(0, scale.x(task.start));
  const width = Math.max(4, Math.min(scale.width, scale.x(task.end)) - x);
  const name = t.message(task.name);
  const label = height >= 15 ? fitted(name, width - 8) : '';
  return (
    <g data-task={task.id}>
      <title>{t('board.taskTitle', { name, from: task.start, to: task.end })}</title>
      <rect x={x} y={y} width={width} height={height} className={styles[kind]} />
      {label !== '' && <text x={x + 5} y={y + height / 2 + 5}>{label}</text>}
    </g>
  );
}

/** The jobs of the dishes that are neither fried nor drunk. */
export const MealLane = memo(function MealLane() {
  const t = useSpeaker();
  const { plan } = useLaneDocument();
  const scale = useTimeScale();
  const { meal: rowHeight } = useDensity();
  const meal = new Set(plan.menu.dishes.filter((d) => d.recipe.brewing === undefined && d.role !== 'friedSnack' && d.role !== 'friedSide').map((d) => d.id));
  const tasks = plan.day.tasks.filter((task) => task.dish !== undefined && meal.has(task.dish));
  if (tasks.length === 0) return null;
  const here = tasks.filter(shown(scale));
  const earlier = tasks.filter((task) => task.end <= scale.from);
  const rows = rowsOf(here.map((task) => ({ start: task.start, end: task.end, task })));
  const count = Math.max(1, ...rows.map((r) => r.row + 1));
  // More rows than three grow thinner, so that the lane keeps its height.
  const mostRows = Math.min(count, mostMealRows);
  const packed = (mostRows * rowHeight) / count;
  const first = earlier[0];
  return (
    <Lane
      kind="meal" title={t('lane.meal')} height={Math.max(mostRows * rowHeight, 48)}
      notes={first === undefined ? [] : [t('board.earlier', { n: earlier.length }), t('board.from', { at: first.start })]}
      summary={t('board.mealSummary', { n: tasks.length })}
    >
      {rows.map(({ item: { task }, row }) => <Bar key={task.id} task={task} y={row * packed + 1} height={Math.max(4, packed - 4)} kind="meal" />)}
    </Lane>
  );
});

/** How many burners are taken over the day, of those there are: as high as it is full. */
function BurnerRow({ y, height }: { readonly y: number; readonly height: number }) {
  const t = useSpeaker();
  const { plan } = useLaneDocument();
  const scale = useTimeScale();
  const has = plan.event.kitchen.burners.length;
  const pieces = curveOf(plan.day.tasks, scale.from, scale.to, burnersOf, () => has);
  return (
    <g data-burners={has}>
      {pieces.map((piece, k) => {
        const to = pieces[k + 1]?.at ?? scale.to;
        const tall = (Math.min(piece.used, has) / Math.max(1, has)) * height;
        return piece.used === 0 ? null : (
          <g key={piece.at}>
            <title>{t('board.burnersTitle', { used: piece.used, has, from: piece.at, to })}</title>
            <rect x={scale.x(piece.at)} y={y + height - tall} width={Math.max(1, scale.x(to) - scale.x(piece.at))} height={tall} className={styles['burners']} />
          </g>
        );
      })}
    </g>
  );
}

/** A row for every helper, and one for the burners. Work that takes only a part of their attention is drawn low. */
export const HandsLane = memo(function HandsLane() {
  const t = useSpeaker();
  const { plan } = useLaneDocument();
  const scale = useTimeScale();
  const { people } = plan.event;
  const { handsTop: top, hands, legends } = useDensity();
  const burners = plan.event.kitchen.burners.length > 0 && plan.day.tasks.some((task) => burnersOf(task) > 0);
  // The burners' row takes its room from the helpers' rows: all five lanes stay in sight on a laptop.
  const rowHeight = burners ? Math.max(17, Math.floor((hands * people.length) / (people.length + 1))) : hands;
  const barHeight = rowHeight - 5;
  return (
    <Lane
      kind="hands" title={t('lane.hands')} height={Math.max(48, top + (people.length + (burners ? 1 : 0)) * rowHeight)}
      rows={[...people.map((p, i) => ({ name: p.name, y: top + i * rowHeight + barHeight / 2 })), ...(burners ? [{ name: t('board.burners'), y: top + people.length * rowHeight + barHeight / 2 }] : [])]}
      {...(legends && plan.day.tasks.some((task) => task.attention > 0 && task.attention < 0.75) ? { legend: t('board.handsKey') } : {})}
      summary={t('board.handsSummary', { people: people.length, jobs: plan.day.tasks.filter((task) => task.who.length > 0).length })}
    >
      {people.map((person, i) => {
        const y = top + i * rowHeight;
        const tasks = plan.day.tasks.filter((task) => task.who.includes(person.id) && task.attention > 0).filter(shown(scale));
        const busy = tasks.filter((task) => task.attention >= 0.75);
        const light = tasks.filter((task) => task.attention < 0.75);
        return (
          <g key={person.id}>
            <line x1={0} x2={scale.width} y1={y + rowHeight - 2} y2={y + rowHeight - 2} className={styles['rowLine']} />
            {light.map((task) => <Bar key={task.id} task={task} y={y + barHeight - 6} height={6} kind="hands" />)}
            {busy.map((task) => <Bar key={task.id} task={task} y={y} height={barHeight} kind="hands" />)}
          </g>
        );
      })}
      {burners && <BurnerRow y={top + people.length * rowHeight} height={barHeight} />}
    </Lane>
  );
});
