import { formatsFor } from '../../../shared/event';
import type { Plan } from '../../../shared/plan';
import { stalePages, type StalePage } from '../../../shared/sheets';
import type { Message } from '../../../shared/words';

const known = new WeakMap<Plan, readonly StalePage[]>();

/** Helpers' printed pages that no longer say what the plan says; worked out once for a plan, since Board and Day both ask. */
export function pagesOutOfDate(plan: Plan): readonly StalePage[] {
  const had = known.get(plan);
  if (had !== undefined) return had;
  // Nothing printed, nothing to compare: the usual case costs nothing.
  const pages = plan.event.issuedSheets.some((s) => s.sheet === 'helpers') ? stalePages(plan, formatsFor(plan.event.preferences, plan.event.day)) : [];
  known.set(plan, pages);
  return pages;
}

/** What a page out of date says and what to do: its first job that moved, and how much more there is. */
export function staleMessage({ name, moved, others }: StalePage): Message {
  const [first] = moved;
  if (first === undefined) return { id: 'view.day.paper.other', params: { others, who: name } };
  return { id: 'view.day.paper.moved', params: { job: first.job, was: first.was, now: first.now, others: moved.length - 1 + others, who: name } };
}
