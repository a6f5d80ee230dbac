import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';
import { anyDay } from './random-days';

const pot = [{ thing: 'pot', count: 1 }];
const people = ['ana', 'ben', 'cy'].map((id) => ({ id, roles: ['cook', 'runner'], from: 420, to: 1200 }));
/** Rice is cooked an hour before it is dressed and served; soup is cooked in that hour. */
const kitchen = (pots: number): TestDay => ({
  people, pots,
  dishes: [
    { id: 'rice', at: 780, steps: [{ id: 'boil', active: 5, passive: 20, needs: pot, endsBefore: { earliest: 70, latest: 60 } }, { id: 'dress', active: 5, after: ['boil'] }] },
    { id: 'soup', at: 780, steps: [{ id: 'boil', active: 5, passive: 10, needs: pot, endsBefore: { earliest: 60, latest: 30 } }] },
  ],
});
const planned = (d: TestDay) => { const event = dayEvent(d); return { event, day: planDay(event, inputsOf(d, event)), formats: formatsFor(event.preferences, event.day) }; };
const jobOf = (day: TimelinePlan, id: string) => { const own = day.tasks.filter((t) => t.job === id); return { start: Number(own[0]!.start), end: Number(own.at(-1)!.end), note: own[0]!.note }; };

describe('a pot with food in it', () => {
  test('is not there for another dish until it is emptied', () => {
    const { day, event } = planned(kitchen(2));
    expect([jobOf(day, 'step/boil/rice').note, jobOf(day, 'step/boil/soup').note, day.overloads]).toEqual([undefined, undefined, []]);
    expect(faultsOf(event, day)).toEqual([]);
  });
  test('where it is wanted before that, the day says when to empty it into a bowl', () => {
    const { day, formats } = planned(kitchen(1));
    const rice = jobOf(day, 'step/boil/rice');
    const dress = jobOf(day, 'step/dress/rice');
    expect(rice.note).toEqual({ id: 'timeline.note.emptyPot', params: { from: rice.end, until: dress.start } });
    expect(sayMessage(formats, rice.note!)).toMatch(/^Its pot is wanted: empty it into a bowl at 1[12]:\d\d; it would stand there until 12:\d\d\.$/);
  });
  test('is washed only when it is empty', () => {
    const { day } = planned(kitchen(3));
    const wash = day.tasks.find((t) => t.id === 'wash-pot/step/boil/rice')!;
    expect(wash.start).toBeGreaterThanOrEqual(jobOf(day, 'step/dress/rice').start);
    expect(day.tasks.find((t) => t.id === 'wash-pot/step/boil/rice/full/stands')).toMatchObject({ start: jobOf(day, 'step/boil/rice').end, end: jobOf(day, 'step/dress/rice').start, who: [] });
  });
  test('that nobody can wash is told', () => {
    const { day, formats } = planned({ ...kitchen(3), people: [{ id: 'ana', roles: ['cook'], from: 420, to: 772 }] });
    const notes = day.notes.filter((m) => m.id === 'timeline.note.unwashed').map((m) => sayMessage(formats, m));
    expect(day.tasks.filter((t) => t.kind === 'wash' && t.attention > 0 && t.id.startsWith('wash-pot')).length + notes.length).toBe(2);
    expect(notes.length).toBeGreaterThan(0);
    expect(notes[0]).toMatch(/^Nobody has time to wash the pot of (rice|soup) after 1\d:\d\d: rinse it where it is wanted again, and leave it for the clean-up\.$/);
  });
  test('in any kitchen no more pots are full or at work than there are, but where the day says to empty one', () => {
    fc.assert(fc.property(anyDay, (d) => {
      const { day, event } = planned(d);
      const early = new Set(day.overloads.map((o) => o.task));
      const inPots = day.tasks.filter((t) => t.needs.some((n) => n.thing.split(':')[0] === 'pot') && !t.id.endsWith('/full/stands'));
      const spans = [...new Set(inPots.map((t) => t.job))].map((job) => {
        const own = inPots.filter((t) => t.job === job);
        const last = own.at(-1)!;
        const next = last.kind === 'step' && last.note?.id !== 'timeline.note.emptyPot' && !early.has(own[0]!.id) ? day.tasks.filter((t) => t.kind === 'step' && t.after.includes(last.id)).map((t) => Number(t.start)) : [];
        return { from: Number(own[0]!.start), to: next.length === 0 ? Number(last.end) : Math.max(Number(last.end), Math.min(...next)), count: Math.max(...own.flatMap((t) => t.needs.map((n) => (n.thing.split(':')[0] === 'pot' ? n.count : 0)))) };
      });
      for (const at of spans.map((s) => s.from + 0.25)) expect(spans.reduce((n, s) => n + (s.from <= at && s.to > at ? s.count : 0), 0)).toBeLessThanOrEqual(event.kitchen.pots.length);
    }), { numRuns: 60, seed: 20261125, endOnFailure: true });
  });
});
