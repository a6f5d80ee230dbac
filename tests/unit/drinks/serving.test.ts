import { describe, expect, it } from 'vitest';
import { planKitchen } from '../../../shared/kitchen';
import { book, clash, latestStart, type Calendar } from '../../../shared/drinks/calendar';
import { nextC, serve } from '../../../shared/drinks/serving';
import { vesselsOf } from '../../../shared/drinks/vessels';
import { drinkEvent, flask } from './drink-event';

const vesselWith = (more: Record<string, unknown>) => vesselsOf(drinkEvent({ dispensers: [{ ...flask, litres: 19, ...more }] }), 'tea', new Set())[0]!;
const brewing = drinkEvent().recipes[0]!.brewing!;

describe('a calendar of pots and burners', () => {
  const busy: Calendar = new Map();
  book(busy, 'pot', 100, 120);
  book(busy, 'burner', 130, 150);
  const wish = { pot: 'other', burner: 'burner', burnerMinutes: 10, minutes: 20, by: 160, wait: 60 };
  it('names the latest clash', () => {
    expect(clash(busy, 'pot', 119, 125)).toBe(100);
    expect(clash(busy, 'pot', 120, 125)).toBeNull();
  });
  it('goes before a booking that is in the way', () => expect(latestStart(busy, wish)).toBe(120));
  it('starts as late as it can when all is free', () => expect(latestStart(new Map(), wish)).toBe(140));
  it('gives up when the drink would wait too long', () => expect(latestStart(busy, { ...wish, wait: 10 })).toBeNull());
  it('wants its pot until the drink is poured', () => {
    const taken: Calendar = new Map([['other', [{ from: 150, to: 155 }]]]);
    expect(latestStart(taken, { ...wish, burner: null })).toBeNull();
  });
});

describe('a vessel', () => {
  it('full of 88 °C in a 20 °C room is at 85.5, 83, 79 after 1, 2, 4 hours (worked example of the reference)', () => {
    const vessel = { ...vesselWith({}), roomC: 20 };
    let celsius = 88;
    const at: number[] = [];
    for (let minute = 1; minute <= 240; minute += 1) {
      celsius = nextC(vessel, celsius, 19);
      if (minute % 60 === 0) at.push(celsius);
    }
    expect(Math.abs(at[0]! - 85.5)).toBeLessThan(0.3);
    expect(Math.abs(at[1]! - 83)).toBeLessThan(0.4);
    expect(Math.abs(at[3]! - 79)).toBeLessThan(0.5);
  });
  it('half full cools twice as fast, and no faster below a quarter', () => {
    const v = vesselWith({});
    expect(80 - nextC(v, 80, 9.5)).toBeCloseTo(2 * (80 - nextC(v, 80, 19)), 2);
    expect(nextC(v, 80, 0.5)).toBe(nextC(v, 80, 1));
  });
  it('gives cups until it is empty, old or too cool', () => {
    const v = vesselWith({});
    const fill = { at: 720, litres: 3, celsius: 85, oldAt: 1000 };
    const empty = serve(brewing, v, fill, () => 0.25, 900);
    expect(empty.served).toBeCloseTo(3, 12);
    expect(empty.until).toBe(732);
    const old = serve(brewing, v, { ...fill, oldAt: 724 }, () => 0.25, 900);
    expect(old.until).toBe(724);
    expect(old.left).toBeCloseTo(2, 12);
    expect(serve(brewing, v, { ...fill, celsius: 64 }, () => 0.25, 900).served).toBe(0);
    expect(serve(brewing, v, fill, () => 0, 730).left).toBe(3);
  });
});

describe('burners', () => {
  it('are known by what they give, in the kitchen of these tests', () => {
    expect(planKitchen(drinkEvent()).burners.map((b) => Math.round(b.usefulW.value))).toEqual([1680, 1200]);
  });
});
