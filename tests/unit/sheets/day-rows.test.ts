import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { mustNotSlip, namesOf } from '../../../shared/sheets';
import { dayRows } from '../../../shared/sheets/day/rows';
import { rowWords } from '../../../shared/sheets/day/row-words';
import type { Task, TaskKind } from '../../../shared/timeline';
import { lanternPlan } from './lantern';

const base = lanternPlan({ batches: 60 });
const job = (id: string, kind: TaskKind, start: number, end: number, more: Partial<Task> = {}): Task => ({
  id, kind, name: { id: 'timeline.task.serve' }, start: minutes(start), end: minutes(end), who: ['fryer'], attention: 1, needs: [], after: [], slack: 0, ...more,
});
const fries = base.frying.batches.map((b) => job(`fry/${b.number}`, 'fry', b.dropAt, b.liftAt, { batch: b.number, station: b.station, attention: 0.5 }));
const bowls = base.frying.bowls.map((b) => job(`bowl/${b.number}`, 'bowl', b.mixAt, b.readyAt, { bowl: b.number, who: ['tea-maker'] }));
const serves = [700, 735, 770].map((at, i) => job(`serve/${i}`, 'serve', at, at + 10));
const step = job('step/boil/rice', 'step', 600, 610);
const itself = job('step/boil/rice/by-itself', 'step', 610, 640, { attention: 0.1, after: ['step/boil/rice'] });
const round = [
  job('brew/1', 'brew', 620, 625, { round: 1, who: ['tea-maker'], name: { id: 'timeline.task.brewStart', params: { round: 1, drink: 'Ginger tea' } } }),
  job('brew/1/by-itself', 'brew', 625, 640, { round: 1, who: [], attention: 0 }),
  job('brew/1/finish', 'brew', 645, 650, { round: 1, who: ['tea-maker'] }),
  job('fill/flask/1', 'fill', 652, 655, { round: 1, name: { id: 'timeline.task.fill', params: { dispenser: 'Tea flask', litres: 6, round: 1 } } }),
];
const all = [...fries, ...bowls, ...serves, step, itself, ...round, job('late', 'clean', 1140, 1200)];
const context = { plan: base, formats: formatsFor(base.event.preferences, base.event.day), names: namesOf(base, formatsFor(base.event.preferences, base.event.day)) };
const wordsOf = (tasks: readonly Task[], wall: boolean): string => dayRows(tasks, base.frying, wall ? 'wall' : 'own').map((r) => { const w = rowWords(r, wall, context); return [w.title, ...w.lines].join(' | '); }).join('\n').replaceAll('\u00a0', ' ');

describe('rows of a day plan', () => {
  it('hold every job in exactly one row, by start, whichever jobs there are', () => {
    fc.assert(fc.property(fc.subarray(all), fc.constantFrom('wall' as const, 'own' as const), (tasks, joining) => {
      const rows = dayRows(tasks, base.frying, joining);
      expect(rows.flatMap((r) => r.tasks.map((t) => t.id)).toSorted()).toEqual(tasks.map((t) => t.id).toSorted());
      rows.forEach((row, i) => {
        expect(row.start).toBeGreaterThanOrEqual(rows[i - 1]?.start ?? -Infinity);
        expect(row.start).toBe(Math.min(...row.tasks.map((t) => t.start)));
        expect(row.end).toBe(Math.max(...row.tasks.map((t) => t.end)));
      });
      expect(new Set(rows.map((r) => r.key)).size).toBe(rows.length);
    }));
  });

  it('tell frying in stretches of at most two hours with their bowls', () => {
    const rows = dayRows([...fries, ...bowls], base.frying, 'wall');
    expect(rows.every((r) => r.kind === 'stretch')).toBe(true);
    for (const row of rows) {
      const own = row.tasks.filter((t) => t.kind === 'fry');
      expect((own.at(-1)?.end ?? 0) - (own[0]?.start ?? 0)).toBeLessThanOrEqual(120);
    }
    expect(rows.length).toBe(3);
  });

  it('begin a new stretch after a long pause', () => {
    expect(dayRows(fries.filter((t) => t.batch === 1 || t.batch === 12), base.frying, 'wall').length).toBe(2);
    expect(dayRows(fries.filter((t) => t.batch === 1 || t.batch === 3), base.frying, 'wall').length).toBe(1);
  });

  it('join a step with the part that runs by itself, and leave that part alone when there is nothing before it', () => {
    expect(dayRows([step, itself], base.frying, 'own').map((r) => r.tasks.length)).toEqual([2]);
    expect(dayRows([itself], base.frying, 'own').map((r) => r.key)).toEqual(['step/boil/rice/by-itself']);
  });

  it('join a round with its fill, unless the flask is filled long after', () => {
    expect(dayRows(round, base.frying, 'wall').length).toBe(1);
    const later = round.map((t) => (t.kind === 'fill' ? { ...t, start: minutes(700), end: minutes(703) } : t));
    expect(dayRows(later, base.frying, 'wall').map((r) => r.key)).toEqual(['round/1', 'fill/flask/1']);
  });

  it('keep bowls and bringing out apart on the page of a helper', () => {
    expect(dayRows([...bowls, ...serves], base.frying, 'own').length).toBe(bowls.length + serves.length);
    expect(dayRows(serves, base.frying, 'wall').length).toBe(1);
  });
});

describe('words of a row', () => {
  it('say when the step runs by itself and who looks in', () => {
    expect(wordsOf([step, itself], true)).toContain('then runs by itself until 10:40, Fryer looks in');
    expect(wordsOf([step, { ...itself, who: [], attention: 0 }], true)).toMatch(/then runs by itself until 10:40$/);
    expect(wordsOf([step, { ...itself, start: minutes(615) }], true)).toContain('runs by itself from 10:15 to 10:40');
  });

  it('say when a round is strained and filled, and by whom when there are several', () => {
    expect(wordsOf(round, true)).toBe('Start round 1: Ginger tea | boils about 10:40; 10:45 finish and strain: Tea; 10:52 fill Tea flask with 6 L of round 1: Fryer');
    expect(wordsOf(round.filter((t) => t.kind === 'brew'), false)).toBe('Start round 1: Ginger tea | boils about 10:40; 10:45 finish and strain');
  });

  it('name every bowl on the wall and every batch on the page of the helper', () => {
    const wall = wordsOf([...fries.slice(0, 6), ...bowls.slice(0, 2)], true);
    expect(wall).toContain('Stove: batches 1 to 6 | each at its minute, see the fry sheet | bowls 1 and 2 at 10:55, 11:20: Tea');
    expect(wordsOf([...fries, bowls[0]!, bowls[2]!], true)).toContain('bowls 1 and 3 at 10:55, 11:45: Tea');
    expect(wordsOf([...fries, ...bowls.slice(0, 3)], true)).toContain('bowls 1 to 3 at');
    const own = wordsOf(fries, false);
    for (const b of base.frying.batches) expect(own).toContain(`batch ${b.number} at `);
    expect(wordsOf(fries.filter((t) => t.batch === 1 || t.batch === 3), false)).toContain('2 batches, numbers 1 to 3');
  });

  it('name every time of bringing out', () => {
    expect(wordsOf(serves, true)).toContain('11:40 Fryer, 12:15 Fryer, 12:50 Fryer');
  });
});

describe('what must not slip', () => {
  it('is a step, setting up or heating oil without slack that somebody does', () => {
    for (const kind of ['step', 'setUp', 'heatOil'] as const) expect(mustNotSlip(job('x', kind, 0, 5))).toBe(true);
    expect(mustNotSlip(job('x', 'heatOil', 0, 5, { attention: 0 }))).toBe(true);
    expect(mustNotSlip(job('x', 'step', 0, 5, { slack: 1 }))).toBe(false);
    expect(mustNotSlip(itself)).toBe(false);
  });

  it('is nothing that has a sheet of its own, and nothing after the guests', () => {
    for (const kind of ['fry', 'bowl', 'brew', 'fill', 'watchOil', 'serve', 'clean', 'cool', 'oilAway', 'shop'] as const) expect(mustNotSlip(job('x', kind, 0, 5))).toBe(false);
  });
});
