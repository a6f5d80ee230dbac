import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eventSchema, type Event } from '../../../shared/event';
import { planKitchen } from '../../../shared/kitchen';
import { drinkEvent, drinksOf, flask, hob } from '../drinks/drink-event';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';

const withBurner = (more: Record<string, unknown>, kitchen: Record<string, unknown> = {}): Event => drinkEvent({ burners: [{ ...hob, ...more }], kitchen });
const useful = (event: Event) => planKitchen(event).burners[0]!.usefulW;
const test = { litres: 3, fromC: 15, minutes: 12, potKg: 1.5 };
const watts = (more: Partial<typeof test>): number => useful(withBurner({ boilTest: { ...test, ...more } })).value;
const cooling = (more: Record<string, unknown>) => drinksOf(drinkEvent({ dispensers: [{ ...flask, ...more }] })).drinks.dispensers[0]!.coolingPerHour;

describe('a burner measured with water', () => {
  it('gives the heat of water and pot over the time, by hand', () => {
    // (3 L × 4.18 + 1.5 kg × 0.49) × 85 K = 1128.4 kJ in 720 s.
    expect(useful(withBurner({ boilTest: test })).value).toBeCloseTo(((3 * 4.18 + 1.5 * 0.49) * 85 * 1000) / 720, 6);
  });
  it('stands above the usual share of its kind and below a share entered', () => {
    expect(useful(withBurner({ boilTest: test })).value).not.toBe(useful(withBurner({})).value);
    expect(useful(withBurner({ boilTest: test, usefulShare: 0.5 })).value).toBe(1000);
  });
  it('gives more the sooner it boils, and no more than with a rise that is smaller', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 170 }), fc.integer({ min: 1, max: 10 }), fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 }), (minutes, later, fromC, warmer) => {
      expect(watts({ minutes })).toBeGreaterThan(watts({ minutes: minutes + later }));
      expect(watts({ minutes, fromC })).toBeGreaterThan(watts({ minutes, fromC: fromC + warmer }));
    }), { numRuns: 60 });
  });
  it('counts the lower boiling point in the mountains', () => {
    expect(useful(withBurner({ boilTest: test }, { altitudeM: 2000 })).value).toBeLessThan(useful(withBurner({ boilTest: test })).value);
  });
  it('out of doors loses to the wind what the table says, and indoors nothing', () => {
    const calm = useful(withBurner({ place: 'outdoor' })).value;
    expect(useful(withBurner({ place: 'outdoor', wind: 'breeze' })).value).toBeCloseTo(calm * 0.85, 9);
    expect(useful(withBurner({ place: 'outdoor', wind: 'wind' })).value).toBeCloseTo(calm * 0.6, 9);
    expect(useful(withBurner({ place: 'indoor', wind: 'wind' })).value).toBe(calm);
  });
  it('shows its working', () => {
    for (const event of [withBurner({ boilTest: test }), withBurner({ boilTest: test, place: 'outdoor', wind: 'breeze' })]) {
      const all = figuresIn(planKitchen(event));
      expect(all.length).toBeGreaterThan(0);
      expect(all.flatMap(workingFaults)).toEqual([]);
      expect(all.flatMap(wordFaults)).toEqual([]);
    }
  });
});

describe('a flask measured with hot water', () => {
  const coolTest = { startC: 92, endC: 86, minutes: 90, roomC: 21 };
  it('cools at the rate that leads from one reading to the other', () => {
    const rate = cooling({ coolTest });
    expect(21 + (92 - 21) * Math.exp(-rate.value * 1.5)).toBeCloseTo(86, 9);
    expect(workingFaults(rate)).toEqual([]);
    expect(wordFaults(rate)).toEqual([]);
  });
  it('stands above its class and above a rate entered', () => {
    expect(cooling({ coolTest, coolingPerHour: 0.5 }).value).toBe(cooling({ coolTest }).value);
    expect(cooling({ coolTest }).value).not.toBe(cooling({}).value);
  });
  it('with readings the wrong way round is told what is wrong', () => {
    const raw = { ...drinkEvent(), kitchen: { ...drinkEvent().kitchen, dispensers: [{ ...flask, coolTest: { ...coolTest, endC: 95 } }] } };
    expect(eventSchema.safeParse(raw).error?.issues[0]).toMatchObject({ message: 'coolTestOrder', path: ['kitchen', 'dispensers', 0, 'coolTest', 'endC'] });
  });
});
