import type { Plan } from '../../../shared/plan';
import type { DayWorth } from '../../../shared/timeline';
import type { Message } from '../../../shared/words';

/** What another day would give, and what it would cost; plain values, so that a worker can send them. */
export interface DayGains {
  readonly gains: readonly Message[];
  readonly costs: readonly Message[];
}

/** Least differences worth a word: minutes of work, percent between helpers, minutes that food stands. */
const noticed = { minutes: 5, unfair: 3, standing: 15 };

/** Jobs that do not fit. */
const unfit = ({ day }: Plan): number => new Set(day.overloads.flatMap((o) => [o.task, ...o.also])).size;
/** When the last job with hands ends. */
const lastEnd = ({ day }: Plan): number => Math.round(Math.max(0, ...day.tasks.filter((t) => t.attention > 0 && t.who.length > 0 && t.kind !== 'rest').map((t) => t.end)));
const busiest = ({ day }: Plan): number => Math.round(Math.max(0, ...day.busy.map((b) => b.minutes.value)));
const stops = ({ safety }: Plan): number => safety.findings.filter((f) => f.level === 'stop').length;

/** True when nothing that must hold is worse in the other day: what fits, what safety stops, who has a break. */
export const holds = (now: Plan, other: Plan): boolean => unfit(other) <= unfit(now) && stops(other) <= stops(now) && other.day.notes.length <= now.day.notes.length;

/** Helpers told to have no break or no room to eat. */
const withoutRest = ({ day }: Plan): number => day.notes.filter((m) => restNotes.has(m.id)).length;
const restNotes = new Set<string>(['timeline.note.noBreak', 'timeline.note.oilNoBreak', 'timeline.note.noMeal', 'timeline.note.noRest']);

/**
 * In words what another day of the same event would give against this one, most important first, and what it would cost. Empty gains: nothing a
 * person would notice.
 */
export function dayGains(now: Plan, other: Plan, before: DayWorth, after: DayWorth): DayGains {
  const [gains, costs]: [Message[], Message[]] = [[], []];
  const tell = (less: number, least: number, gain: Message, cost: Message): void => {
    if (less >= least) gains.push(gain);
    else if (-less >= least) costs.push(cost);
  };
  const fits = unfit(now) - unfit(other);
  tell(fits, 1, { id: 'view.day.better.fits', params: { jobs: fits } }, { id: 'view.day.better.fitsLess', params: { jobs: -fits } });
  const rests = withoutRest(now) - withoutRest(other);
  tell(rests, 1, { id: 'view.day.better.rests', params: { breaks: rests } }, { id: 'view.day.better.restsLess', params: { breaks: -rests } });
  const [end, otherEnd] = [lastEnd(now), lastEnd(other)];
  tell(end - otherEnd, noticed.minutes, { id: 'view.day.better.end', params: { at: otherEnd, was: end } }, { id: 'view.day.better.endLater', params: { at: otherEnd, was: end } });
  const share = before.unfair - after.unfair;
  const most = busiest(now) - busiest(other);
  if (most >= noticed.minutes) gains.push({ id: 'view.day.better.busiest', params: { minutes: most } });
  else tell(share, noticed.unfair, { id: 'view.day.better.even' }, { id: 'view.day.better.uneven' });
  const late = before.lateEvening - after.lateEvening;
  if (Math.abs(end - otherEnd) < noticed.minutes) tell(late, noticed.minutes, { id: 'view.day.better.evening', params: { minutes: late } }, { id: 'view.day.better.eveningMore', params: { minutes: -late } });
  const standing = before.standing - after.standing;
  tell(standing, noticed.standing, { id: 'view.day.better.standing', params: { minutes: standing } }, { id: 'view.day.better.standingMore', params: { minutes: -standing } });
  return { gains, costs };
}
