import { useRef, useState, type PointerEvent } from 'react';
import { changeJob } from '../../../shared/edit';
import type { Task } from '../../../shared/timeline';
import type { Message } from '../../../shared/words';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { documentStore } from '../../app/store';
import { useFrame } from '../../parts/frame';
import type { TimeScale } from '../../parts/time-scale';
import { firstOfJob, hasOwnPlan, refOf, standsAtOil } from './job-ref';

/** Where a job is to stand and with whom; what is absent stays. */
export interface Move { readonly at?: number; readonly who?: string }

const snap = (at: number): number => Math.round(at / 5) * 5;
/** A hand is not steady: less than this many pixels is a press, not a drag. */
const steady = 4;
let stroke = 0;

interface Held { readonly task: Task; readonly at: number; readonly x: number; readonly y: number; readonly merge: string; moved: boolean }

/** Moving jobs and giving them to others, by pointer and by keys; each drag is one step of undo. `problem` says why the last move was refused. */
export function useJobMoves(laneAt: (clientY: number) => string | null) {
  const t = useSpeaker();
  const { plan, event, edit, readOnly } = useDocument();
  const [problem, setProblem] = useState<Message | null>(null);
  const [dragging, setDragging] = useState<string | null>(null);
  const held = useRef<Held | null>(null);
  const apply = (task: Task, move: Move, merge: string): void => {
    if (readOnly || (hasOwnPlan(task) && move.who === undefined)) return;
    const at = hasOwnPlan(task) ? undefined : move.at;
    const base = documentStore.base(merge);
    setProblem(edit(changeJob(base, refOf(task, t), { ...(at === undefined ? {} : { at }), ...(move.who === undefined || task.kind === 'rest' ? {} : { who: move.who }) }), merge));
  };
  const onFrame = useFrame((next: { task: Task; move: Move; merge: string }) => apply(next.task, next.move, next.merge));
  return {
    problem, dragging, apply,
    /** Moves by minutes, as the arrow keys do. */
    nudge: (task: Task, by: number): void => apply(task, { at: snap(firstOfJob(task, plan.day.tasks).start + by) }, `job-keys-${refOf(task, t).key}`),
    /** Gives it to the helper so many places further down. */
    handOn: (task: Task, by: number): void => {
      if (standsAtOil(task) || task.kind === 'rest' || event.people.length === 0) return;
      const now = event.people.findIndex((p) => p.id === task.who[0]);
      const next = event.people[(Math.max(0, now) + by + event.people.length) % event.people.length];
      if (next !== undefined) apply(task, { who: next.id }, `job-keys-${refOf(task, t).key}`);
    },
    grab: (task: Task) => (e: PointerEvent<SVGGElement>): void => {
      if (e.button !== 0 || standsAtOil(task)) return;
      e.currentTarget.setPointerCapture(e.pointerId);
      stroke += 1;
      held.current = { task, at: firstOfJob(task, plan.day.tasks).start, x: e.clientX, y: e.clientY, merge: `job-${task.id}-${stroke}`, moved: false };
    },
    pull: (scale: TimeScale) => (e: PointerEvent<SVGGElement>): void => {
      const h = held.current;
      if (h === null) return;
      const across = Math.abs(e.clientX - h.x) > steady;
      const down = Math.abs(e.clientY - h.y) > 14;
      if (!h.moved && !across && !down) return;
      h.moved = true;
      setDragging(h.task.id);
      const lane = down ? laneAt(e.clientY) : null;
      const to = ((e.clientX - h.x) / scale.width) * (scale.to - scale.from);
      onFrame({ task: h.task, merge: h.merge, move: { ...(across ? { at: snap(h.at + to) } : {}), ...(lane !== null && lane !== h.task.who[0] ? { who: lane } : {}) } });
    },
    drop: (): void => { held.current = null; setDragging(null); },
  };
}
