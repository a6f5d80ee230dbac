import type { Event } from '../../shared/event';
import type { Message } from '../../shared/words';

/** One step that can be undone: the event before and after, and what it is called. */
export interface Step {
  readonly before: Event;
  readonly after: Event;
  readonly name: Message;
  /** Steps with the same key melt into one: a drag, a slider held down. */
  readonly merge: string | null;
}
/** The steps behind and ahead of where the cook stands. Events share their unchanged parts, so keeping them whole costs little. */
export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** Nothing to undo yet. */
export const noHistory: History = { past: [], future: [] };
const longest = 500;

/** Adds a step; what had been undone is gone. */
export function addStep(history: History, step: Step): History {
  const last = history.past.at(-1);
  if (last !== undefined && step.merge !== null && last.merge === step.merge && history.future.length === 0) {
    return { past: [...history.past.slice(0, -1), { ...step, before: last.before }], future: [] };
  }
  return { past: [...history.past, step].slice(-longest), future: [] };
}

/** One step back: the event to go to, the history then. Null when there is nothing to undo. */
export function stepBack(history: History): { readonly event: Event; readonly step: Step; readonly history: History } | null {
  const step = history.past.at(-1);
  if (step === undefined) return null;
  return { event: step.before, step, history: { past: history.past.slice(0, -1), future: [step, ...history.future] } };
}

/** One step forward again. */
export function stepForward(history: History): { readonly event: Event; readonly step: Step; readonly history: History } | null {
  const [step, ...future] = history.future;
  if (step === undefined) return null;
  return { event: step.after, step, history: { past: [...history.past, step], future } };
}
