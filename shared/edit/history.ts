import type { Event } from '../event';
import type { Message } from '../words';

/** One edit in the history: what it was called and the event before and after. Events share what did not change, so a step costs little. */
export interface HistoryStep {
  readonly name: Message;
  /** Steps of one group in a row are one step of undo: a drag, or typing in one field. */
  readonly group: string | null;
  readonly before: Event;
  readonly after: Event;
}

/** The event as it is now, with what can be undone and done again. A value: every function below gives a new one. */
export interface History {
  readonly present: Event;
  /** Oldest first. */
  readonly past: readonly HistoryStep[];
  /** Next to do again first. */
  readonly future: readonly HistoryStep[];
  /** The group that may still grow; null once it is closed. */
  readonly openGroup: string | null;
}

/** Most steps kept; older ones can no longer be undone. */
export const longestHistory = 500;

/** A history that starts with this event. */
export const startHistory = (event: Event): History => ({ present: event, past: [], future: [], openGroup: null });

/**
 * Adds a step. What could be done again is forgotten. An edit that changed nothing (the same event) adds no step.
 * @param group key of a drag or of typing in one field, e.g. `wave-2.from`; steps of the open group are merged into one.
 */
export function record(history: History, after: Event, name: Message, group: string | null = null): History {
  if (after === history.present) return history;
  const last = history.past.at(-1);
  const merges = last !== undefined && group !== null && group === history.openGroup && last.group === group;
  const step: HistoryStep = { name, group, before: merges ? last.before : history.present, after };
  const past = [...(merges ? history.past.slice(0, -1) : history.past), step].slice(-longestHistory);
  return { present: after, past, future: [], openGroup: group };
}

/** Ends a drag or typing: the next step of the same group is a step of its own. */
export const closeGroup = (history: History): History => (history.openGroup === null ? history : { ...history, openGroup: null });

/** Takes the last step back; the same history when there is none. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return { present: step.before, past: history.past.slice(0, -1), future: [step, ...history.future], openGroup: null };
}

/** Does the next step again; the same history when there is none. */
export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (step === undefined) return history;
  return { present: step.after, past: [...history.past, step], future, openGroup: null };
}

/**
 * Notes something in the event that is no step and is not taken back by undo (what was printed): it goes into every event of the history.
 * @param note gives the event with the note.
 */
export function amend(history: History, note: (event: Event) => Event): History {
  const noted = new Map<Event, Event>();
  const of = (event: Event): Event => {
    const known = noted.get(event) ?? note(event);
    noted.set(event, known);
    return known;
  };
  const steps = (list: readonly HistoryStep[]): HistoryStep[] => list.map((step) => ({ ...step, before: of(step.before), after: of(step.after) }));
  return { ...history, present: of(history.present), past: steps(history.past), future: steps(history.future) };
}

const nameOf = (step: HistoryStep | undefined): Message | null => {
  if (step === undefined) return null;
  return step.name;
};

/** Name of the step `undo` would take back, or null. */
export const undoName = (history: History): Message | null => nameOf(history.past.at(-1));
/** Name of the step `redo` would do again, or null. */
export const redoName = (history: History): Message | null => nameOf(history.future[0]);
