import type { JobRef } from '../../../shared/edit';
import type { Task } from '../../../shared/timeline';
import type { Speaker } from '../../app/speak';

/** The job a block is a stretch of, as changes are laid down under it. */
export const jobOf = (task: Task): string => task.job ?? task.id;

/** Key and name of the job of a block. */
export const refOf = (task: Task, t: Speaker): JobRef => ({ key: jobOf(task), name: t.message(task.name) });

const ofOil = new Set<Task['kind']>(['heatOil', 'watchOil', 'fry']);
const ofPlan = new Set<Task['kind']>(['bowl', 'brew', 'fill']);

/** Nobody moves or gives away work at the hot oil: it is the fry plan's. */
export const standsAtOil = (task: Task): boolean => ofOil.has(task.kind);
/** Its minute and length are those of the fry plan or the drinks plan. */
export const hasOwnPlan = (task: Task): boolean => ofOil.has(task.kind) || ofPlan.has(task.kind);
/** First stretch of the same job: its start is the job's. */
export const firstOfJob = (task: Task, tasks: readonly Task[]): Task => tasks.filter((o) => jobOf(o) === jobOf(task)).reduce((a, b) => (b.start < a.start ? b : a), task);
