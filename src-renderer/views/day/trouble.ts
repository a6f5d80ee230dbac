import type { Plan } from '../../../shared/plan';
import type { Overload, Task } from '../../../shared/timeline';
import type { Message } from '../../../shared/words';

/** Jobs that do not fit, told once: a title that names the job (or the stretch without hands) and the sentences under it. */
export interface Trouble {
  readonly key: string;
  /** When it begins, minutes from midnight. */
  readonly at: number;
  readonly title: Message;
  readonly sentences: readonly Message[];
  /** First tasks of the clashes it is made of. */
  readonly clashes: readonly string[];
}

/** Stretches without hands that lie no further apart than this many minutes are one: the same helper would do for both. */
const nearMinutes = 20;
/** Sentences that say a job has nobody. */
const noHands = new Set(['timeline.overload.nobody', 'timeline.overload.oil']);

interface Late { readonly overload: Overload; readonly jobs: readonly Task[]; readonly first: Task }
const endOf = (late: Late): number => Math.max(...late.jobs.map((t) => t.end));

/** Most hands wanted at one moment; jobs that need a part of the attention share a helper. */
function handsWanted(stretch: readonly Late[]): number {
  const jobs = stretch.flatMap((late) => late.jobs);
  const wanted = jobs.map((job) => jobs.filter((other) => other.start <= job.start && other.end > job.start).reduce((sum, other) => sum + other.attention, 0));
  return Math.max(1, Math.ceil(Math.max(...wanted) - 1e-9));
}

/** The role that every one of these jobs asks for, the best liked first; null when no role does for all. A day has its own word for who fries. */
function roleForAll(stretch: readonly Late[]): string | null {
  const [first, ...rest] = stretch.flatMap((late) => late.jobs).filter((job) => job.attention > 0).map((job) => job.roles ?? []);
  return first?.find((role) => rest.every((roles) => roles.includes(role))) ?? null;
}

/** The smallest set of jobs that clash, where it is known. */
const clashing = ({ overload }: Late): Message[] => (overload.clash === undefined ? [] : [overload.clash.message]);

function joined(stretch: readonly Late[]): Trouble {
  const [one] = stretch;
  if (one === undefined) throw new Error('a stretch has at least one job');
  if (stretch.length === 1) return { key: `late ${one.overload.task}`, at: one.first.start, title: { id: 'board.jobLate', params: { at: one.first.start, job: one.first.name } }, sentences: [one.overload.message, ...clashing(one)], clashes: [one.overload.task] };
  const to = Math.max(...stretch.map(endOf));
  return {
    key: `late ${stretch.map((late) => late.overload.task).join(' ')}`, at: one.first.start,
    title: { id: 'board.moreHelpers', params: { helpers: handsWanted(stretch), from: one.first.start, to, jobs: stretch.length, role: roleForAll(stretch) } },
    sentences: [...stretch.map((late): Message => ({ id: 'board.jobLateWhy', params: { at: late.first.start, job: late.first.name, why: late.overload.message } })), ...clashing(one)],
    clashes: stretch.map((late) => late.overload.task),
  };
}

/** What does not fit on the day, in order of time; jobs nobody is free for in the same stretch are told together. */
export function troubles(plan: Plan): Trouble[] {
  const tasks = new Map(plan.day.tasks.map((task) => [task.id, task]));
  const late = plan.day.overloads.flatMap((overload): Late[] => {
    const jobs = [overload.task, ...overload.also].flatMap((id) => tasks.get(id) ?? []);
    const first = tasks.get(overload.task);
    return first === undefined ? [] : [{ overload, jobs, first }];
  }).toSorted((a, b) => a.first.start - b.first.start);
  const stretches: Late[][] = [];
  for (const one of late) {
    const last = stretches.findLast((s) => s.every((x) => noHands.has(x.overload.message.id)));
    if (noHands.has(one.overload.message.id) && last !== undefined && one.first.start <= Math.max(...last.map(endOf)) + nearMinutes) last.push(one);
    else stretches.push([one]);
  }
  return stretches.map(joined);
}
