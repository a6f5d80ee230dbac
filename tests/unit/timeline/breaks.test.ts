import { describe, expect, test } from 'vitest';
import { breakNotes } from '../../../shared/timeline/breaks';
import { dayValues } from '../../../shared/timeline/day-values';
import type { Task } from '../../../shared/timeline';
import { minutes } from '../../../shared/measure';
import { dayEvent } from './make-day';

const event = dayEvent({ people: [{ id: 'ana', roles: ['cook'], from: 480, to: 1200 }] });
const work = (start: number, end: number, kind: Task['kind'] = 'step'): Task => ({
  id: `${kind}/${start}`, kind, name: { id: 'timeline.task.serve' }, start: minutes(start), end: minutes(end), who: ['ana'], attention: 0.8, needs: [], after: [], slack: 0,
});
const notes = (...tasks: Task[]) => breakNotes(event, tasks, dayValues(event));

describe('a stretch of work without a break', () => {
  test('is told when it is longer than five hours, with a time in the middle', () => {
    expect(notes(work(600, 700), work(700, 905))).toEqual([{ id: 'timeline.note.noBreak', params: { person: 'ana', from: 600, to: 905, at: 755 } }]);
    expect(notes(work(600, 900))).toEqual([]);
  });
  test('is joined over gaps too short to be a break, and ended by a break', () => {
    expect(notes(work(600, 750), work(764, 905))).toHaveLength(1);
    expect(notes(work(600, 750), work(765, 905))).toEqual([]);
  });
  test('at the oil has its own sentence; work that runs by itself and work at home do not count', () => {
    expect(notes(work(600, 950, 'watchOil'), work(950, 990)).map((n) => n.id)).toEqual(['timeline.note.oilNoBreak']);
    expect(notes({ ...work(600, 950), attention: 0 }, { ...work(600, 951), note: { id: 'timeline.note.household' } })).toEqual([]);
  });
});
