import { describe, expect, it } from 'vitest';
import { plan } from '../../../shared/plan';
import { demo } from '../demo/demo';
import { drinkEvent, drinksOf } from './drink-event';

const pots = [{ id: 'p12', name: 'Large pot', litres: 12, massKg: 2.4 }, { id: 'p5', name: 'Pot', litres: 5, massKg: 1.4 }, { id: 'p3', name: 'Small pot', litres: 3, massKg: 1 }];

describe('the pot of a round', () => {
  it.each([[2, 'p3'], [8, 'p5'], [20, 'p12']])('for %i adults is the smallest that holds it', (adults, pot) => {
    const [round] = drinksOf(drinkEvent({ adults, pots, tea: { goodForMinutes: 400 }, dispensers: [{ id: 'flask', name: 'Flask', litres: 20, massKg: 4, insulation: 'heated', dish: 'tea' }] })).drinks.rounds;
    expect(round?.pot).toBe(pot);
  });
  it('is a large one only when each smaller that would hold it is taken: every demo round, at 68 to 110 adults', () => {
    const event = demo('lantern-evening');
    for (const adults of [68, 90, 110]) {
      const { drinks } = plan({ ...event, guests: { ...event.guests, headcount: { ...event.guests.headcount, adults } } });
      const pouredAt = (round: number): number => Math.max(0, ...drinks.fills.filter((f) => f.round === round).map((f) => f.at));
      for (const r of drinks.rounds.filter((x) => x.heatMinutes.value > 0)) {
        const own = event.kitchen.pots.find((p) => p.id === r.pot);
        // Heating another pot takes a little longer or shorter: five minutes either side count as taken.
        const idle = event.kitchen.pots.filter((p) => p.litres < (own?.litres ?? 0) && p.litres * 0.75 >= r.waterLitres.value + 0.5
          && !drinks.rounds.some((o) => o.pot === p.id && o.startAt < pouredAt(r.number) + 5 && pouredAt(o.number) > r.startAt - 15));
        expect({ adults, round: r.number, litres: r.litres, pot: r.pot, idle: idle.map((p) => p.id) }).toMatchObject({ idle: [] });
      }
    }
  });
});
