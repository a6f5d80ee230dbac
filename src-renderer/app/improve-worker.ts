import '../jitless';
import { takeDayOrder } from '../../shared/edit';
import { parseEvent, type DayOrder, type Event } from '../../shared/event';
import { dayRemedies, plan } from '../../shared/plan';
import { improveDay, type ClashRemedies } from '../../shared/timeline';
import { dayGains, holds, type DayGains } from '../views/day/gains';

/** What the page asks: the event in its file form, and how long to look. */
export interface ImproveQuestion {
  readonly event: string;
  /** Comes back with the answers, so that a late one is known. */
  readonly turn: number;
  readonly startNumber: number;
  /** Days to lay out. */
  readonly budget: number;
}

/** A day that is better in a way a person notices: the order that gives it, what it gives, how many jobs it moves. */
export interface FoundDay extends DayGains {
  readonly order: DayOrder;
  readonly moved: number;
}

/** What comes back first: ways out of each clash, each planned. */
export interface WaysAnswer {
  readonly kind: 'ways';
  readonly turn: number;
  readonly ways: readonly ClashRemedies[];
}
/** What comes back last; `better` is null when the day at once is as good as any found, or the event cannot be read. Figures stay behind: their workings cannot be sent. */
export interface BetterAnswer {
  readonly kind: 'better';
  readonly turn: number;
  readonly better: FoundDay | null;
}

const isQuestion = (data: unknown): data is ImproveQuestion =>
  typeof data === 'object' && data !== null && 'event' in data && typeof data.event === 'string' && 'turn' in data && typeof data.turn === 'number'
  && 'startNumber' in data && typeof data.startNumber === 'number' && 'budget' in data && typeof data.budget === 'number';

/** Looks for a better day and plans the event with it, guests to safety: it is told only when a person would notice, and nothing that must hold is worse. */
export function betterDay(event: Event, startNumber: number, budget: number): FoundDay | null {
  const now = plan(event);
  const found = improveDay({ event, inputs: now }, startNumber, budget);
  if (found === null) return null;
  const taken = takeDayOrder(event, found.order);
  if ('problem' in taken) return null;
  const other = plan(taken.event);
  const told = dayGains(now, other, found.before, found.after);
  return told.gains.length === 0 || !holds(now, other) ? null : { ...told, order: found.order, moved: new Set(found.moves.map((m) => m.task)).size };
}

globalThis.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (!isQuestion(data)) return;
  const { turn, startNumber, budget } = data;
  const read = parseEvent(data.event);
  const ways: WaysAnswer = { kind: 'ways', turn, ways: read.ok ? dayRemedies(read.event) : [] };
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker answers its own page: there is no origin to name
  globalThis.postMessage(ways);
  const better: BetterAnswer = { kind: 'better', turn, better: read.ok ? betterDay(read.event, startNumber, budget) : null };
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- as above
  globalThis.postMessage(better);
});
