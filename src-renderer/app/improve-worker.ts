import { parseEvent } from '../../shared/event';
import { plan } from '../../shared/plan';
import { improveDay, type BetterDay } from '../../shared/timeline';

/** What the page asks: the event in its file form, and how long to look. */
export interface ImproveQuestion {
  readonly event: string;
  readonly startNumber: number;
  /** Days to lay out. */
  readonly budget: number;
}

/** What comes back; `better` is null when the day at once is as good as any found, or the event cannot be read. Figures stay behind: their workings cannot be sent. */
export interface ImproveAnswer {
  readonly startNumber: number;
  readonly better: Pick<BetterDay, 'before' | 'after' | 'moves'> | null;
}

const isQuestion = (data: unknown): data is ImproveQuestion =>
  typeof data === 'object' && data !== null && 'event' in data && typeof data.event === 'string' && 'startNumber' in data && typeof data.startNumber === 'number' && 'budget' in data && typeof data.budget === 'number';

/** Looks for a better day; runs in the worker, away from the page. */
export function answer({ event, startNumber, budget }: ImproveQuestion): ImproveAnswer {
  const read = parseEvent(event);
  if (!read.ok) return { startNumber, better: null };
  const made = plan(read.event);
  const found = improveDay({ event: read.event, inputs: made }, startNumber, budget);
  return { startNumber, better: found === null ? null : { before: found.before, after: found.after, moves: found.moves } };
}

globalThis.addEventListener('message', (message: MessageEvent<unknown>) => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker answers its own page: there is no origin to name
  if (isQuestion(message.data)) globalThis.postMessage(answer(message.data));
});
