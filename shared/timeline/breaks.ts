import type { Event } from '../event';
import type { Message } from '../words';
import type { DayValues } from './day-values';
import type { Task } from './types';

interface Spell {
  readonly from: number;
  readonly to: number;
}

/** Stretches of some tasks, joined over gaps too short to be a break. */
function joined(tasks: readonly Task[], gap: number): Spell[] {
  const spells: Spell[] = [];
  for (const t of tasks.toSorted((a, b) => a.start - b.start)) {
    const last = spells.at(-1);
    if (last !== undefined && t.start < last.to + gap) spells[spells.length - 1] = { from: last.from, to: Math.max(last.to, t.end) };
    else spells.push({ from: t.start, to: t.end });
  }
  return spells;
}

/** The first stretch longer than the settled one; undefined when there is none. */
const tooLong = (tasks: readonly Task[], { breakEvery, breakLength }: DayValues): Spell | undefined => joined(tasks, breakLength).find((s) => s.to - s.from > breakEvery);

/** A round minute in the middle, when somebody may take over. */
const middle = ({ from, to }: Spell): number => Math.round((from + to) / 2 / 5) * 5;

/**
 * Who works on the day longer than the settled stretch without a gap that is a break, in the order of the people list: one sentence each,
 * the one about the hot oil where it is the oil that keeps them. A caution, no fault: who takes over is for the household to say.
 */
export function breakNotes(event: Event, tasks: readonly Task[], values: DayValues): Message[] {
  return event.people.flatMap(({ id, name }): Message[] => {
    const own = tasks.filter((t) => t.attention > 0 && t.who.includes(id) && t.note?.id !== 'timeline.note.household');
    const oil = tooLong(own.filter((t) => t.kind === 'watchOil' || t.kind === 'fry'), values);
    const any = oil ?? tooLong(own, values);
    if (any === undefined) return [];
    return [{ id: oil === undefined ? 'timeline.note.noBreak' : 'timeline.note.oilNoBreak', params: { person: name, from: any.from, to: any.to, at: middle(any) } }];
  });
}
