/** Critical path and slack against worked networks of textbooks. */
import { describe, expect, test } from 'vitest';
import { criticalPath, type ScheduleProblem } from '../../shared/timeline';

interface Row { readonly name: string; readonly time: number; readonly after: string; readonly es: number; readonly ls: number }
const problemOf = (rows: readonly Row[]): ScheduleProblem => ({
  durations: rows.map((r) => r.time), demands: rows.map(() => []), capacities: [],
  lags: rows.flatMap((r, to) => r.after.split('').map((name) => { const from = rows.findIndex((x) => x.name === name); return { from, to, least: rows[from]!.time }; })),
});

/** Heizer and Render, Operations Management, chapter on project management, Milwaukee Paper Manufacturing (weeks; from memory). */
const milwaukee: readonly Row[] = [
  { name: 'A', time: 2, after: '', es: 0, ls: 0 }, { name: 'B', time: 3, after: '', es: 0, ls: 1 }, { name: 'C', time: 2, after: 'A', es: 2, ls: 2 },
  { name: 'D', time: 4, after: 'AB', es: 3, ls: 4 }, { name: 'E', time: 4, after: 'C', es: 4, ls: 4 }, { name: 'F', time: 3, after: 'C', es: 4, ls: 10 },
  { name: 'G', time: 5, after: 'DE', es: 8, ls: 8 }, { name: 'H', time: 2, after: 'FG', es: 13, ls: 13 },
];
/** A worked exercise on starting a company, its published times seen on homeworklib.com 1445255 (weeks, here in half weeks); the rules of order are read back from those times. */
const company: readonly Row[] = [
  { name: 'A', time: 4, after: '', es: 0, ls: 3 }, { name: 'B', time: 7, after: '', es: 0, ls: 0 }, { name: 'C', time: 3, after: 'AB', es: 7, ls: 7 },
  { name: 'D', time: 9, after: 'A', es: 4, ls: 12 }, { name: 'E', time: 11, after: 'C', es: 10, ls: 10 }, { name: 'F', time: 1, after: 'DE', es: 21, ls: 21 },
  { name: 'G', time: 14, after: 'F', es: 22, ls: 22 }, { name: 'H', time: 11, after: 'E', es: 21, ls: 25 },
];

describe.each([['Milwaukee Paper', milwaukee, 15, 'ACEGH'], ['starting a company', company, 36, 'BCEFG']] as const)('%s', (_, rows, length, critical) => {
  test('length, earliest and latest starts, slack and critical path are the published ones', () => {
    const path = criticalPath(problemOf(rows));
    if (path.kind !== 'path') throw new Error('no path');
    expect(path.makespan).toBe(length);
    expect([...path.earliestStart]).toEqual(rows.map((r) => r.es));
    expect([...path.latestStart]).toEqual(rows.map((r) => r.ls));
    expect([...path.slack]).toEqual(rows.map((r) => r.ls - r.es));
    expect(path.critical.map((i) => rows[i]!.name).join('')).toBe(critical);
  });
});

test('rules that contradict each other are named instead', () => {
  // Rest at least 30 minutes, eat within 20 of the same moment.
  const answer = criticalPath({ durations: [10, 5, 5], demands: [[], [], []], capacities: [], lags: [{ from: 0, to: 1, least: 30 }, { from: 1, to: 0, least: -20 }] });
  expect(answer).toEqual({ kind: 'contradiction', activities: expect.arrayContaining([0, 1]), shortBy: 10 });
});
