import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { plan, type Plan } from '../../../shared/plan';
import type { Task } from '../../../shared/timeline';
import { jobsAhead } from '../../../src-renderer/views/board/first-jobs';
import { troubles } from '../../../src-renderer/views/day/trouble';

function lantern(): Plan {
  const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
  if (!parsed.ok) throw new Error('the demo does not open');
  return plan(parsed.event);
}
const made = lantern();

describe('jobs ahead', () => {
  it('begins with the very first job of all while the day has not begun', () => {
    const handed = made.day.tasks.filter((t) => t.attention > 0 || t.who.length > 0);
    const first = Math.min(...handed.map((t) => t.start));
    for (const now of [null, first - 2000, first]) {
      const { begun, jobs } = jobsAhead(made, now);
      expect([begun, jobs.length, jobs[0]?.start]).toEqual([false, handed.length, first]);
    }
  });

  it('leaves out what has begun already, and nothing else', () => {
    const { begun, jobs } = jobsAhead(made, 720);
    expect(begun).toBe(true);
    expect(jobs.every((t) => t.start >= 720)).toBe(true);
    expect(jobs[0]?.start).toBe(Math.min(...made.day.tasks.filter((t) => t.start >= 720 && (t.attention > 0 || t.who.length > 0)).map((t) => t.start)));
  });

  it('shows the first jobs again when all is over', () => {
    expect(jobsAhead(made, 100_000)).toMatchObject({ begun: false });
  });
});

const job = (id: string, start: number, end: number, attention = 1): Task => ({ id, kind: 'step', name: { id: 'lane.meal' }, start: minutes(start), end: minutes(end), who: [], attention, needs: [], after: [], slack: 0 });

describe('jobs nobody is free for', () => {
  const hands = { atOil: 1, busy: 1, away: 0 };
  const late = (task: Task) => ({ task: task.id, lateMinutes: 0, also: [], message: { id: 'timeline.overload.nobody' as const, params: { from: task.start, to: task.end, ...hands } } });
  const of = (...tasks: Task[]) => troubles({ ...made, day: { ...made.day, tasks, overloads: tasks.map(late) } });

  it('are told together when they lie near each other, whatever their order', () => {
    const told = of(job('c', 930, 980), job('a', 860, 900), job('b', 915, 930));
    expect(told.map((x) => x.title)).toEqual([{ id: 'board.moreHelpers', params: { helpers: 1, from: 860, to: 980, jobs: 3, role: null } }]);
    expect(told[0]?.sentences).toHaveLength(3);
  });

  it('need two helpers where two want all attention at once, one where each wants half', () => {
    expect(of(job('a', 860, 900), job('b', 870, 890))[0]?.title).toMatchObject({ params: { helpers: 2 } });
    expect(of(job('a', 860, 900, 0.5), job('b', 870, 890, 0.5))[0]?.title).toMatchObject({ params: { helpers: 1 } });
  });

  it('stay apart when hours lie between', () => {
    const told = of(job('a', 860, 900), job('b', 1000, 1010));
    expect(told.map((x) => x.title)).toEqual([
      { id: 'board.jobLate', params: { at: 860, job: { id: 'lane.meal' } } },
      { id: 'board.jobLate', params: { at: 1000, job: { id: 'lane.meal' } } },
    ]);
  });
});
