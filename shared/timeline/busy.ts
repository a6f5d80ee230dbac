import { computed, figure, sumOf, type Figure } from '../figure';
import type { Task } from './types';

/** Stretches in which a person has something to do, joined where they touch or overlap. Unit: minutes. */
export function spellsOf(tasks: readonly Task[], person: string): number[] {
  const own = tasks.filter((t) => t.attention > 0 && t.who.includes(person)).toSorted((a, b) => a.start - b.start);
  const spells: { from: number; to: number }[] = [];
  for (const t of own) {
    const last = spells.at(-1);
    if (last !== undefined && t.start <= last.to + 1e-9) last.to = Math.max(last.to, t.end);
    else spells.push({ from: t.start, to: t.end });
  }
  return spells.map((s) => s.to - s.from);
}

/** Busy minutes of a person: all stretches with something to do. Unit: minutes. */
export function busyFigure(tasks: readonly Task[], person: string): Figure {
  const spells = spellsOf(tasks, person);
  return figure(spells.reduce((a, b) => a + b, 0), 'min', () => ({
    rule: 'timeline.busy',
    terms: [computed('spells', { word: 'timeline.term.spells' }, spells, 'min', 'timeline.method.spells')],
    sum: sumOf('spells'),
  }));
}
