import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const planned = (d: TestDay): TimelinePlan => { const event = dayEvent(d); return planDay(event, inputsOf(d, event)); };
const soup = [{ id: 'soup', at: 780, steps: [{ id: 'cut', active: 30 }] }];
const rests = (day: TimelinePlan, who: string) => day.tasks.filter((t) => t.kind === 'rest' && t.who.includes(who));

describe('breaks and meals', () => {
  test('somebody here for twelve hours sits down to eat about the middle and has a break before and after', () => {
    const own = rests(planned({ people: [{ id: 'ana', roles: ['cook'], from: 480, to: 1200 }], dishes: soup }), 'ana');
    expect(own.map((t) => t.id)).toEqual(['rest/ana/1', 'rest/ana/meal', 'rest/ana/2']);
    const meal = own[1]!;
    expect(meal.end - meal.start).toBe(30);
    expect(Math.abs((meal.start + meal.end) / 2 - 840)).toBeLessThanOrEqual(180);
  });
  test('somebody here for four hours has neither', () => {
    expect(rests(planned({ people: [{ id: 'ana', roles: ['cook'], from: 600, to: 840 }], dishes: soup }), 'ana')).toEqual([]);
  });
  test('no room for a meal is told, not hidden', () => {
    const day = planned({ people: [{ id: 'ana', roles: ['fryer'], from: 480, to: 1200 }], dishes: soup, stations: [{ on: 600, ready: 620, off: 1100, drops: [700, 800], cycle: 6 }] });
    expect(rests(day, 'ana').some((t) => t.id.endsWith('meal'))).toBe(false);
    expect(day.notes.length).toBeGreaterThan(0);
  });
  test('who fries all day is relieved at the oil between two batches, and rests just then', () => {
    const event = eventSchema.parse(JSON.parse(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8')));
    const { day, frying } = plan(event);
    const meal = day.tasks.find((t) => t.id === 'rest/fryer/meal')!;
    const relief = day.tasks.filter((t) => t.kind === 'watchOil' && t.start < meal.end && t.end > meal.start && t.station === frying.sessions[0]!.station);
    expect(relief.length).toBeGreaterThan(0);
    for (const t of relief) expect(t.who).not.toContain('fryer');
    const batches = frying.batches.filter((b) => b.station === frying.sessions[0]!.station);
    for (const t of relief) expect(batches.filter((b) => (b.dropAt < t.start && b.panFreeAt > t.start) || (b.dropAt < t.end && b.panFreeAt > t.end))).toEqual([]);
    expect(faultsOf(event, day)).toEqual([]);
  });
  test('breaks are no work: busy minutes are without them', () => {
    const day = planned({ people: [{ id: 'ana', roles: ['cook'], from: 480, to: 1200 }], dishes: soup });
    const spells = day.tasks.filter((t) => t.kind !== 'rest' && t.attention > 0 && t.who.includes('ana') && t.note === undefined);
    expect(day.busy[0]!.minutes.value).toBeLessThanOrEqual(spells.reduce((n, t) => n + t.end - t.start, 0) + day.tasks.filter((t) => t.note !== undefined).reduce((n, t) => n + t.end - t.start, 0));
    const withRest = day.tasks.filter((t) => t.who.includes('ana') && t.attention > 0).reduce((n, t) => n + t.end - t.start, 0);
    expect(withRest - rests(day, 'ana').reduce((n, t) => n + t.end - t.start, 0)).toBe(day.busy[0]!.minutes.value);
  });
});

describe('the jobs between', () => {
  const crew = [{ id: 'ana', roles: ['cook'], from: 420, to: 1260 }, { id: 'ben', roles: ['runner'], from: 420, to: 1260 }];
  const cooked: TestDay = { people: crew, pots: 2, dishes: [{ id: 'rice', at: 780, steps: [{ id: 'boil', active: 5, passive: 30, needs: [{ thing: 'burner', count: 1 }, { thing: 'pot', count: 1 }] }, { id: 'rest', active: 2, passive: 5, needs: [{ thing: 'pot', count: 1 }], after: ['boil'] }] }] };
  test('a pot is taken until it is washed, once for a dish that goes on in it', () => {
    const day = planned(cooked);
    const washing = day.tasks.filter((t) => t.id.startsWith('wash-pot/'));
    expect(washing.filter((t) => t.attention > 0).map((t) => t.id)).toEqual(['wash-pot/step/rest/rice']);
    const last = day.tasks.find((t) => t.id === 'step/rest/rice/by-itself')!;
    expect(Math.min(...washing.map((t) => t.start))).toBe(last.end);
    for (const t of washing) expect(t.needs).toEqual([{ thing: 'pot', count: 1 }]);
    const end = Math.max(...washing.map((t) => t.end));
    expect(washing.reduce((n, t) => n + t.end - t.start, 0)).toBe(end - last.end);
  });
  test('checklists are read before their moment, washing-up and bins while guests are there', () => {
    const day = planned({ ...cooked, stations: [{ on: 730, ready: 745, off: 900, drops: [750, 770], cycle: 6 }] });
    const at = (id: string) => day.tasks.find((t) => t.id === id)!;
    expect(at('check/day-before').start).toBeLessThan(0);
    expect(at('check/oil').end).toBeLessThanOrEqual(730);
    expect(at('check/doors').end).toBeLessThanOrEqual(720);
    expect(at('check/leftovers').start).toBeGreaterThanOrEqual(1080);
    expect(day.tasks.some((t) => t.kind === 'wash' && t.id.startsWith('wash/') && t.start > 720 && t.end < 1080)).toBe(true);
    expect(day.tasks.filter((t) => t.id.startsWith('bins/')).map((t) => t.id)).toEqual(['bins/1', 'bins/last']);
  });
  test('a day without guests and oil has no checklist', () => {
    const freezer = eventSchema.parse(JSON.parse(readFileSync('assets/app/demo/freezer-sunday.brimful', 'utf8')));
    expect(plan(freezer).day.tasks.filter((t) => t.kind === 'check')).toEqual([]);
  });
});
