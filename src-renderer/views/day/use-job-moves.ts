import { useState, type PointerEvent } from 'react';
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

/** Moving jobs and giving them to others, by pointer and by keys; each drag is one step of undo. `problem` says why the last move was refused. */
export function useJobMoves(laneAt: (clientY: number) => string | null) {
  const t = useSpeaker();
  const { plan, event, edit, readOnly } = useDocument();
  const [problem, setProblem] = useState<Message | null>(null);
  const [dragging, setDragging] = useState<string | null>(null);
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
    nudge: (task: Task, by: number): void => {
      if (readOnly) return;
      if (hasOwnPlan(task)) setProblem({ id: standsAtOil(task) ? 'day.edit.oilStays' : 'day.edit.planStays', params: { name: t.message(task.name) } });
      else apply(task, { at: snap(firstOfJob(task, plan.day.tasks).start + by) }, `job-keys-${refOf(task, t).key}`);
    },
    /** Gives it to the helper so many places further down. */
    handOn: (task: Task, by: number): void => {
      if (readOnly || event.people.length === 0) return;
      if (standsAtOil(task) || task.kind === 'rest') {
        setProblem(task.kind === 'rest' ? { id: 'view.day.restStays' } : { id: 'day.edit.oilStays', params: { name: t.message(task.name) } });
        return;
      }
      const now = event.people.findIndex((p) => p.id === task.who[0]);
      const next = event.people[(Math.max(0, now) + by + event.people.length) % event.people.length];
      if (next !== undefined) apply(task, { who: next.id }, `job-keys-${refOf(task, t).key}`);
    },
    /** Takes hold of a block. The window is listened to, not the block: the block is drawn anew in another lane while it is held. */
    grab: (task: Task, scale: TimeScale) => (e: PointerEvent<SVGElement>): void => {
      if (e.button !== 0 || standsAtOil(task)) return;
      stroke += 1;
      const merge = `job-${task.id}-${stroke}`;
      const start = { at: firstOfJob(task, plan.day.tasks).start, x: e.clientX, y: e.clientY, who: task.who[0] };
      let [moved, laneChanged] = [false, false];
      const pull = (to: globalThis.PointerEvent): void => {
        const across = Math.abs(to.clientX - start.x) > steady;
        const lane = Math.abs(to.clientY - start.y) > steady * 2 || laneChanged ? laneAt(to.clientY) : null;
        laneChanged ||= lane !== null && lane !== start.who;
        if (!moved && !across && !laneChanged) return;
        moved = true;
        setDragging(task.id);
        const by = ((to.clientX - start.x) / scale.width) * (scale.to - scale.from);
        onFrame({ task, merge, move: { ...(across ? { at: snap(start.at + by) } : {}), ...(lane !== null && laneChanged ? { who: lane } : {}) } });
      };
      const drop = (): void => {
        window.removeEventListener('pointermove', pull);
        window.removeEventListener('pointerup', drop);
        window.removeEventListener('pointercancel', drop);
        setDragging(null);
      };
      window.addEventListener('pointermove', pull);
      window.addEventListener('pointerup', drop);
      window.addEventListener('pointercancel', drop);
    },
  };
}
