import { minutes } from '../measure';
import { lengthOf, type Placed } from './job';
import type { Resources } from './resources';
import { slacksOf } from './slack';
import type { Task } from './types';

/** Tasks of all placed jobs, by start, then id. */
export function tasksOf(resources: Resources, placed: readonly Placed[]): Task[] {
  const slacks = slacksOf(resources, placed);
  const lastTask = new Map(placed.map((p) => [p.job.id, p.job.stretches.at(-1)?.id ?? p.job.id]));
  const tasks = placed.flatMap((p, at) => {
    const slack = slacks[at] ?? 0;
    const outside = p.home ? { note: { id: 'timeline.note.household' } as const } : {};
    let start = p.start;
    return p.job.stretches.map((stretch, k): Task => {
      const from = start;
      start = k === p.job.stretches.length - 1 ? p.start + lengthOf(p.job) : start + stretch.minutes;
      const before = k === 0 ? p.job.after.flatMap((id) => lastTask.get(id) ?? []) : [p.job.stretches[k - 1]?.id ?? p.job.id];
      const there = p.who !== null && (stretch.attention > 0 || p.job.kind === 'heatOil');
      return {
        id: stretch.id, kind: p.job.kind, name: stretch.name, start: minutes(from), end: minutes(start),
        who: there ? [p.who] : [], attention: stretch.attention, needs: p.things ? stretch.needs : [],
        ...p.job.about, after: before, slack, job: p.job.id, roles: p.job.laid?.roles ?? p.job.roles,
        ...(p.job.laid?.at === undefined ? {} : { held: p.job.laid.held }), ...(p.job.laid?.who === undefined ? {} : { given: true }), ...(p.job.note === undefined ? outside : { note: p.job.note }),
      };
    });
  });
  return tasks.toSorted((a, b) => a.start - b.start || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
