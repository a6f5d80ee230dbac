import { minutes } from '../measure';
import { lengthOf, type Placed } from './job';
import type { Resources } from './resources';
import { slacksOf } from './slack';
import type { Task } from './types';

/** A task while it is written: what is absent is not there at all. */
type Draft = { -readonly [K in keyof Task]: Task[K] };

const nobody: readonly string[] = [];
const nothing: Task['needs'] = [];
const household = { id: 'timeline.note.household' } as const;

function addAbout(task: Draft, { dish, station, batch, bowl, round, cooking }: Placed['job']['about']): void {
  if (dish !== undefined) task.dish = dish;
  if (station !== undefined) task.station = station;
  if (batch !== undefined) task.batch = batch;
  if (bowl !== undefined) task.bowl = bowl;
  if (round !== undefined) task.round = round;
  if (cooking !== undefined) task.cooking = cooking;
}

/** Tasks of all placed jobs, by start, then id. */
export function tasksOf(resources: Resources, placed: readonly Placed[]): Task[] {
  const slacks = slacksOf(resources, placed);
  const lastTask = new Map<string, string>();
  for (const { job } of placed) lastTask.set(job.id, job.stretches.at(-1)?.id ?? job.id);
  const tasks: Task[] = [];
  for (const [at, p] of placed.entries()) {
    const { job, who } = p;
    const { laid, stretches } = job;
    const end = p.start + lengthOf(job);
    const [roles, held, note] = [laid?.roles ?? job.roles, laid?.at === undefined ? undefined : laid.held, job.note ?? (p.home ? household : undefined)];
    const hands = who === null ? nobody : [who];
    let from = p.start;
    let before: readonly string[] = job.after.flatMap((id) => lastTask.get(id) ?? []);
    for (const [k, stretch] of stretches.entries()) {
      const to = k === stretches.length - 1 ? end : from + stretch.minutes;
      const task: Draft = {
        id: stretch.id, kind: job.kind, name: stretch.name, start: minutes(from), end: minutes(to),
        who: stretch.attention > 0 || job.kind === 'heatOil' ? hands : nobody, attention: stretch.attention, needs: p.things ? stretch.needs : nothing, after: before, slack: slacks[at] ?? 0,
      };
      addAbout(task, job.about);
      task.job = job.id;
      task.roles = roles;
      if (held !== undefined) task.held = held;
      if (laid?.who !== undefined) task.given = true;
      if (note !== undefined) task.note = note;
      tasks.push(task);
      before = [stretch.id];
      from = to;
    }
  }
  return tasks.sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
