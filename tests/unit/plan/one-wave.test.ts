// The first wave of the Lantern Evening, recomputed by hand line by line: 21 guests who come evenly between 11:00 and 11:40 and stay
// 60 to 180 minutes, usually 100. Every number on the right was worked out on paper from the event's own entries and the reference tables.
import { describe, expect, it } from 'vitest';
import { plan } from '../../../shared/plan';
import { demo } from '../demo/demo';
import { fewestBatches } from './recount';

const whole = demo('lantern-evening');
const event = { ...whole, guests: { ...whole.guests, waves: whole.guests.waves.slice(0, 1) } };
const made = plan(event);
const dish = made.menu.dishes.find((d) => d.id === 'fritters')!;
const batches = made.frying.batches.filter((b) => b.dish === 'fritters');
const [at1130, at1200, at1300] = [690, 720, 780];
const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/** Fritters wanted before a minute. */
const until = (minute: number) => sum(dish.demand.values.slice(0, minute - dish.demand.fromMinute));

describe('the guests of the wave', () => {
  const { presence, arrivals } = made.guests;
  const present = (minute: number) => presence.expected[minute - presence.fromMinute]!;

  it('are 16 adults and 5 children: 13 + 3, and 1 + 2 + 2', () => {
    expect([made.guests.adults.value, made.guests.children.value]).toEqual([16, 5]);
  });
  it('arrive 21 ÷ 40 = 0.525 in every minute from 11:00, and nobody after 11:40', () => {
    for (const minute of [660, 675, 699]) expect(arrivals.values[minute - arrivals.fromMinute]).toBeCloseTo(0.525, 12);
    expect(arrivals.values[700 - arrivals.fromMinute]).toBeCloseTo(0, 12);
  });
  it('are 30 × 0.525 = 15.75 at 11:30, since nobody has left', () => expect(present(at1130)).toBeCloseTo(15.75, 12));
  it('are all 21 at 12:00, when the first to come have been there for the shortest stay', () => expect(present(at1200)).toBeCloseTo(21, 12));
  it('are 13.854 at 13:00: the first have spent 105.833 of 120 minutes, the last 79.444 of 80; the difference over 40 is 0.65972', () => {
    // Spent by the first: 120 − (60³ ÷ 40 − 20³ × (1 ÷ 40 + 1 ÷ 80)) ÷ 360 = 120 − (5400 − 300) ÷ 360 = 105.8333.
    // Spent by the last: 80 − (20³ ÷ 40) ÷ 360 = 80 − 200 ÷ 360 = 79.4444.
    expect(present(at1300)).toBeCloseTo((21 * (105 + 5 / 6 - (79 + 4 / 9))) / 40, 10);
    expect(present(at1300)).toBeCloseTo(13.8542, 4);
  });
});

describe('the fritters they want', () => {
  it('are 18.81 counted as adults × 5 × 1.07778 for the stay = 101.365, so 102', () => {
    // 13 + 3 × 0.9 + 1 × 0.45 + 2 × 0.58 + 2 × 0.75 = 18.81. Mean stay 340 ÷ 3 = 113.33: 1 + 0.2 × 23.33 ÷ 60 = 1.07778.
    expect(dish.perAdult.value).toBe(5);
    expect(18.81 * 5 * (1 + (0.2 * (340 / 3 - 90)) / 60)).toBeCloseTo(101.365, 3);
    expect(dish.portions.value).toBe(102);
    expect(sum(dish.demand.values)).toBe(102);
  });
  it('by 11:30 are 23: three fifths go in the first half hour, of which 15 ÷ 40 has passed: 0.6 × 0.375 × 102 = 22.95', () => {
    expect(until(690)).toBe(23);
  });
  it('by 12:30 are 81: the first part is eaten, of the other 40 ÷ 83.33 = 0.48: (0.6 + 0.4 × 0.48) × 102 = 80.78', () => {
    expect(until(750)).toBe(81);
  });
});

describe('the batches', () => {
  it('begin with the first fritter, wanted at 11:04: out five minutes before, at 10:59, so in at 10:55', () => {
    expect(dish.demand.fromMinute + dish.demand.values.findIndex((n) => n > 0)).toBe(664);
    expect([batches[0]!.dropAt, batches[0]!.liftAt, batches[0]!.panFreeAt, batches[0]!.eatBy]).toEqual([655, 659, 660, 679]);
  });
  it('are nine: the third is full with the 24 that go in at once, the others end where the 20 minutes of the next begin, and the last give the ninth, which would be two, a share', () => {
    expect(made.frying.loads.find((l) => l.dish === 'fritters')!.pieces.value).toBe(24);
    expect(batches.map((b) => [b.dropAt, b.pieces])).toEqual([[655, 10], [671, 22], [687, 24], [703, 14], [720, 8], [736, 8], [752, 7], [767, 5], [780, 4]]);
  });
  it('feed every fritter five to twenty minutes after its lift, walked through one by one here', () => {
    const wanted = dish.demand.values.flatMap((n, i) => Array.from({ length: n }, () => dish.demand.fromMinute + i));
    let next = 0;
    for (const b of batches) {
      for (const minute of wanted.slice(next, next + b.pieces)) {
        expect(minute - b.liftAt).toBeGreaterThanOrEqual(5);
        expect(minute - b.liftAt).toBeLessThanOrEqual(20);
      }
      next += b.pieces;
    }
    expect(next).toBe(102);
  });
  it('could not be fewer: full ones would be 102 ÷ 24, so 5, but the hold limit asks for 9, found by a search of its own', () => {
    expect(fewestBatches({ demand: [...dish.demand.values], load: 24, fryMinutes: 4, cycleMinutes: 5, hold: 20, lead: 5, earliestDrop: -2000 })).toBe(9);
    const working = made.frying.batchCount.working();
    expect(working.terms.find((t) => t.key === 'full0')?.value).toBe(5);
  });
});

describe('the first bowl', () => {
  const bowl = made.frying.bowls[0]!;
  const amount = (ingredient: string) => bowl.lines.find((l) => l.ingredient === ingredient)!.amount;

  it('is for the first two batches, 10 + 22 = 32 fritters: the third goes in at 11:27, after its 20 minutes', () => {
    expect([bowl.readyAt, bowl.useBy, bowl.pieces]).toEqual([655, 675, 32]);
    expect(batches.slice(0, 3).map((b) => b.bowls)).toEqual([[1], [1], [2]]);
  });
  it('is mixed in the five minutes before, and holds 32 × 25 g = 0.8 kg of the 5 L × 0.6 × 1 kg/L = 3 kg it may', () => {
    expect(bowl.mixAt).toBe(650);
    expect(bowl.batterKg).toBeCloseTo(0.8, 12);
  });
  it.each([
    ['chickpea-flour', 340.4255, 'g'], ['water', 272.3404, 'ml'], ['spring-onion', 85.1064, 'g'], ['spinach', 85.1064, 'g'], ['salt', 6.8085, 'g'],
    ['lemon-juice-fresh', 6.8085, 'ml'], ['sunflower-oil', 10.2128, 'ml'], ['baking-soda', 1.7021, 'g'],
  ])('takes 32 of 94 parts of the recipe: %s %f %s', (ingredient, value, unit) => {
    expect(amount(ingredient).amount.toNumber()).toBeCloseTo(value, 4);
    expect(amount(ingredient).unit).toBe(unit);
  });
});
