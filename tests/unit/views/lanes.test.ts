import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutes } from '../../../shared/measure';
import type { Task } from '../../../shared/timeline';
import { dayHours, lanesOf, stacked } from '../../../src-renderer/views/day/lanes';
import { lanternPlan } from '../sheets/lantern';

const task = (id: number, start: number, length: number): Task => ({ ...lanternPlan().day.tasks[0]!, id: String(id), start: minutes(start), end: minutes(start + length) });
const jobs = fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 1, max: 90 })), { maxLength: 40 }).map((list) => list.map(([start, length], i) => task(i, start, length)));

describe('jobs in rows', () => {
  it('never overlap in a row, and none is lost', () => {
    fc.assert(fc.property(jobs, (tasks) => {
      const rows = stacked(tasks);
      expect(rows.flat().map((t) => t.id).sort()).toEqual(tasks.map((t) => t.id).sort());
      for (const row of rows) row.slice(1).forEach((t, i) => expect(t.start).toBeGreaterThanOrEqual(row[i]!.end));
    }));
  });

  it('take as few rows as the most jobs at one time', () => {
    fc.assert(fc.property(jobs, (tasks) => {
      const most = Math.max(0, ...tasks.map((t) => tasks.filter((o) => o.start <= t.start && t.start < o.end).length));
      expect(stacked(tasks).length).toBe(most);
    }));
  });
});

describe('the lanes of a day', () => {
  const names = { itself: 'By itself', nobody: 'Nobody free' };

  it('begin with the helpers in their order, also those with nothing to do', () => {
    expect(lanesOf(lanternPlan(), 0, 1440, names).map((l) => l.name)).toEqual(['Fryer', 'Tea']);
  });

  it('go on past midnight as long as the house is open, and three hours more', () => {
    const plan = lanternPlan();
    const late = { ...plan, event: { ...plan.event, opensAt: 1260, closesAt: 1590 }, day: { ...plan.day, tasks: [task(1, 1260, 60), task(2, 1680, 20), task(3, 1800, 30)] } };
    expect(dayHours(late)).toEqual({ from: 1260, to: 1740 });
  });

  it('add what runs by itself and what nobody can do only when there is such a job', () => {
    const plan = lanternPlan();
    const day = { ...plan.day, tasks: [{ ...task(1, 600, 60), who: [], attention: 0 }, { ...task(2, 700, 10), who: [], attention: 1 }] };
    expect(lanesOf({ ...plan, day }, 0, 1440, names).map((l) => l.kind)).toEqual(['person', 'person', 'nobody', 'itself']);
  });

  it('leave out what lies outside the hours shown', () => {
    const [fryer] = lanesOf(lanternPlan(), 0, 1440, names);
    expect(fryer!.rows.flat().map((t) => t.id)).toEqual(['heat-oil']);
  });

  it('span whole hours from the first job of the day; null without one', () => {
    expect(dayHours(lanternPlan())).toEqual({ from: 600, to: 720 });
    const plan = lanternPlan();
    expect(dayHours({ ...plan, day: { ...plan.day, tasks: [] } })).toBeNull();
  });
});
