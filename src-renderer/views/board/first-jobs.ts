import type { Plan } from '../../../shared/plan';
import type { Task } from '../../../shared/timeline';

/** The jobs still ahead, in order of time, the days before included; from the first one while `now` (minutes from the event's midnight) is not known or all is over. */
export function jobsAhead(plan: Plan, now: number | null): { readonly begun: boolean; readonly jobs: readonly Task[] } {
  const jobs = plan.day.tasks.filter((task) => task.who.length > 0 || task.attention > 0).toSorted((a, b) => a.start - b.start);
  const ahead = now === null ? jobs : jobs.filter((task) => task.start >= now);
  return ahead.length === 0 || ahead.length === jobs.length ? { begun: false, jobs } : { begun: true, jobs: ahead };
}
