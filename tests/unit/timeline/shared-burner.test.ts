import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Event } from '../../../shared/event';
import { planDay } from '../../../shared/timeline';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const people = [0, 1, 2].map((i) => ({ id: `f${i}`, roles: ['fryer'], from: 600, to: 1200 }));
type Session = { readonly on: number; readonly off: number };
const dayOf = (sessions: readonly Session[]): TestDay => ({
  people, dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }], stations: sessions.map((s) => ({ on: s.on, ready: s.on + 10, off: s.off, drops: [s.on + 15], cycle: 5 })),
});
/** All pans of the day over burner 0. */
const onOne = (event: Event): Event => ({ ...event, kitchen: { ...event.kitchen, pans: event.kitchen.pans.map((p) => ({ ...p, burner: 'b0' })) } });
const planOf = (sessions: readonly Session[]) => {
  const day = dayOf(sessions);
  const event = onOne(dayEvent(day));
  const plan = planDay(event, inputsOf(day, event));
  return { plan, faults: faultsOf(event, plan), claims: plan.tasks.filter((t) => t.needs.some((n) => n.thing === 'burner:b0')).map((t) => [t.start, t.end]) };
};

describe('pans that share a burner', () => {
  test('claim it once when they are hot at the same time', () => {
    const { plan, faults, claims } = planOf([{ on: 700, off: 800 }, { on: 700, off: 800 }]);
    expect([plan.overloads, faults]).toEqual([[], []]);
    expect(claims).toEqual([[700, 800]]);
  });
  test('claim it once when one stays hot longer: the second claims the rest', () => {
    const { plan, faults, claims } = planOf([{ on: 700, off: 800 }, { on: 680, off: 860 }]);
    expect([plan.overloads, faults]).toEqual([[], []]);
    expect(claims).toEqual([[680, 700], [700, 800], [800, 860]]);
    expect(plan.tasks.filter((t) => t.id.startsWith('watch/pan1')).map((t) => [t.id, t.start, t.end])).toEqual([['watch/pan1/1/1', 680, 700], ['watch/pan1/1/1/2', 700, 800], ['watch/pan1/1/1/3', 800, 860]]);
  });
  test('claim it for just the minutes in which one of them is hot, however many there are', () => {
    const session = fc.record({ on: fc.integer({ min: 640, max: 900 }), length: fc.integer({ min: 25, max: 150 }) }).map((s): Session => ({ on: s.on, off: s.on + s.length }));
    fc.assert(fc.property(fc.array(session, { minLength: 1, maxLength: 3 }), (sessions) => {
      const { plan, faults, claims } = planOf(sessions);
      expect(faults).toEqual([]);
      expect(plan.overloads.filter((o) => o.message.id === 'timeline.overload.thing')).toEqual([]);
      for (let at = 640.5; at < 1060; at += 1) {
        const hot = sessions.some((s) => s.on <= at && at < s.off);
        expect(claims.filter(([from, to]) => from! <= at && at < to!)).toHaveLength(hot ? 1 : 0);
      }
    }), { numRuns: 120 });
  });
});
