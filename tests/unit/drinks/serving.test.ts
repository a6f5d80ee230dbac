import { describe, expect, it } from 'vitest';
import { planKitchen } from '../../../shared/kitchen';
import { bookHands, Calendar, handsFree, latestBrew } from '../../../shared/drinks/calendar';
import { lastsUntil, running } from '../../../shared/drinks/running-out';
import { nextC, serve } from '../../../shared/drinks/serving';
import { vesselsOf } from '../../../shared/drinks/vessels';
import { drinkEvent, flask } from './drink-event';

const vesselWith = (more: Record<string, unknown>) => vesselsOf(drinkEvent({ dispensers: [{ ...flask, litres: 19, ...more }] }), 'tea', new Set())[0]!;
const brewing = drinkEvent().recipes[0]!.brewing!;

const booked = (id: string, from: number, to: number): Calendar => {
  const calendar = new Calendar();
  calendar.book(id, from, to);
  return calendar;
};

describe('a calendar of pots and burners', () => {
  const wish = { pot: 'other', burner: 'burner', burnerMinutes: 10, minutes: 20, by: 160, wait: 60, hands: 0, handsMinutes: 5 };
  it('knows when a thing is in use: from inclusive, to exclusive', () => {
    const pot = booked('pot', 100, 120).of('pot');
    expect(pot.conflict(119, 125, 1)).toEqual({ from: 100, to: 120 });
    expect(pot.conflict(120, 125, 1)).toBeNull();
  });
  it('goes before a booking that is in the way', () => expect(latestBrew(booked('burner', 130, 150), wish)).toBe(120));
  it('starts as late as it can when all is free', () => expect(latestBrew(new Calendar(), wish)).toBe(140));
  it('waits for hands: started at another minute when somebody is busy with the start of another drink', () => {
    const hands = new Calendar();
    bookHands(hands, 1, 138, 143);
    expect(latestBrew(hands, { ...wish, hands: 1 })).toBe(133);
    expect(latestBrew(hands, { ...wish, hands: 2 })).toBe(140);
    expect(latestBrew(hands, { ...wish, hands: 0 })).toBe(140);
  });
  it('gives each pair of hands one thing at a time, and none when all are taken', () => {
    const hands = new Calendar();
    bookHands(hands, 2, 100, 110);
    expect(handsFree(hands, 2, 105, 108)).toBe(true);
    bookHands(hands, 2, 105, 115);
    expect(handsFree(hands, 2, 105, 108)).toBe(false);
    expect(handsFree(hands, 2, 110, 115)).toBe(true);
    bookHands(hands, 2, 106, 107);
    expect(hands.booked).toBe(2);
  });
  it('wants one pair of hands throughout, not two that take turns', () => {
    const hands = new Calendar();
    hands.book('hands 0', 140, 143);
    hands.book('hands 1', 143, 150);
    expect(latestBrew(hands, { ...wish, hands: 2 })).toBe(138);
  });
  it('gives up when the drink would wait too long', () => expect(latestBrew(booked('burner', 130, 150), { ...wish, wait: 10 })).toBeNull());
  it('wants its pot until the drink is poured', () => expect(latestBrew(booked('other', 150, 155), { ...wish, burner: null })).toBeNull());
  it('is as it was when bookings are taken back', () => {
    const calendar = booked('burner', 130, 150);
    const before = calendar.booked;
    calendar.book('burner', 110, 130);
    bookHands(calendar, 1, 100, 160);
    expect(latestBrew(calendar, { ...wish, hands: 1 })).not.toBe(120);
    calendar.backTo(before);
    expect(latestBrew(calendar, { ...wish, hands: 1 })).toBe(120);
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
  it('takes out minute by minute what it serves', () => {
    const s = serve(brewing, vesselWith({}), { at: 720, litres: 1, celsius: 85, oldAt: 1000 }, (t) => (t % 2 === 0 ? 0.3 : 0), 900);
    expect(s.drawn.slice(0, 5).map((x) => Math.round(x * 10) / 10)).toEqual([0.3, 0, 0.3, 0, 0.3]);
    expect(s.drawn.reduce((a, b) => a + b, 0)).toBeCloseTo(s.served, 12);
  });
  it('lasts until it is empty, old or too cool, or past the last minute', () => {
    const v = vesselWith({});
    const fill = { at: 720, litres: 3, celsius: 85, oldAt: 1000 };
    const lasts = (poured: typeof fill, demand: (minute: number) => number, last: number) => lastsUntil(brewing, v, poured, running(700, Array.from({ length: 300 }, (_, i) => demand(700 + i))), last);
    expect(lasts(fill, () => 0.25, 900)).toBe(732);
    expect(lasts({ ...fill, oldAt: 724 }, () => 0.25, 900)).toBe(724);
    expect(lasts({ ...fill, celsius: 64 }, () => 0.25, 900)).toBe(720);
    expect(lasts(fill, (t) => (t < 732 ? 0.25 : 0), 900)).toBe(901);
    expect(lasts(fill, (t) => (t < 732 || t === 890 ? 0.25 : 0), 900)).toBe(732);
    expect(lasts(fill, () => 0, 730)).toBe(731);
  });
});

describe('burners', () => {
  it('are known by what they give, in the kitchen of these tests', () => {
    expect(planKitchen(drinkEvent()).burners.map((b) => Math.round(b.usefulW.value))).toEqual([1680, 1200]);
  });
});
