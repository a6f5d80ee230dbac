import { describe, expect, test } from 'vitest';
import type { Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { drinkEvent, flask } from '../drinks/drink-event';
import { demo } from '../demo/demo';

/** The day of an event with one tea person, on whose hands the minutes of brewing fall. */
const dayOf = (event: Event) => {
  const { day, drinks } = plan({ ...event, people: [{ ...demo('lantern-evening').people[2]!, from: 400, to: 1300 }] });
  return { drinks, brew: day.tasks.filter((t) => t.kind === 'brew') };
};
const own = (figure: string, value: number): Event => ({ ...drinkEvent(), houseFigures: [{ figure, value, unit: 'min', why: 'Large pots.' }] });

describe('the hands of a brew round', () => {
  test('are the same in the drinks plan and in the day', () => {
    for (const event of [drinkEvent(), drinkEvent({ water: true }), demo('lantern-evening'), demo('school-fair-stall')]) {
      const { drinks, brew } = dayOf(event);
      for (const r of drinks.rounds) {
        const hands = brew.filter((t) => t.round === r.number && t.attention > 0).map((t) => t.end - t.start);
        expect(hands).toEqual([r.startHands, r.finishHands].filter((m) => m > 0));
      }
    }
  });
  test('a house figure of 15 minutes for straining and pouring makes the last job of every round 15 minutes long', () => {
    const { drinks, brew } = dayOf(own('brew.pourMinutes', 15));
    expect(drinks.rounds.length).toBeGreaterThan(0);
    for (const r of drinks.rounds) {
      const finish = brew.find((t) => t.id === `brew/${r.number}/finish`)!;
      expect(finish.end - finish.start).toBe(15);
    }
  });
  test('a house figure for the start makes the first job of every round longer', () => {
    const { drinks, brew } = dayOf(own('brew.startMinutes', 9));
    for (const r of drinks.rounds) expect(brew.find((t) => t.id === `brew/${r.number}`)).toMatchObject({ start: r.startAt, end: r.startAt + 9 });
  });
  test('a jug of water is hands from start to end; a cold drink that steeps for hours is not', () => {
    const { drinks } = dayOf(drinkEvent({ water: true }));
    const water = drinks.rounds.find((r) => r.drink === 'water-jug')!;
    expect(water.startHands).toBe(water.readyAt - water.startAt);
    expect(water.finishHands).toBe(0);
    const steeped = dayOf(drinkEvent({ tea: { method: 'cold', hot: false, steepMinutes: 120, serveAboveC: null }, dispensers: [{ ...flask, insulation: 'none' }] })).drinks.rounds[0]!;
    expect([steeped.startHands, steeped.finishHands]).toEqual([5, 5]);
    expect(steeped.readyAt - steeped.startAt).toBe(125);
  });
});
