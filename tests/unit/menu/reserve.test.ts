import { describe, expect, it, test } from 'vitest';
import { familySquares, planGuests } from '../../../shared/guests';
import { planMenu } from '../../../shared/menu';
import type { Event } from '../../../shared/event';
import { demo } from '../demo/demo';
import { dish, drinkOf, menuEvent, menuOf, recipeOf } from './make-menu';

const stay = { shortest: 90, usual: 90, longest: 90 };
const half = { kind: 'share', share: 0.5 };

/** Every number of a plan of people and portions that a guest more must not lower. */
function numbersOf(event: Event): Map<string, number> {
  const guests = planGuests(event);
  const menu = planMenu(event, guests);
  return new Map([
    ...(['adults', 'children', 'planned', 'peak'] as const).map((k): [string, number] => [k, guests[k].value]),
    ...menu.dishes.map((d): [string, number] => [`portions of ${d.id}`, d.portions.value]),
    ...menu.dishes.map((d): [string, number] => [`amount of ${d.id}`, d.total.amount.toNumber()]),
  ]);
}

function fallsAlong(headcounts: readonly (readonly [number, number])[], event: Event): string[] {
  const falls: string[] = [];
  let before = new Map<string, number>();
  for (const [adults, children] of headcounts) {
    const now = numbersOf({ ...event, guests: { ...event.guests, headcount: { adults, children } } });
    for (const [name, v] of now) if (v < (before.get(name) ?? 0) - 1e-9) falls.push(`${name} falls from ${before.get(name)} to ${v} with ${adults} adults and ${children} children`);
    before = now;
  }
  return falls;
}

const upTo = (n: number): number[] => Array.from({ length: n + 1 }, (_, i) => i);

describe.each(['lantern-evening', 'school-fair-stall'] as const)('%s: a guest more never lowers a total or the portions of a dish', (name) => {
  test.each([21, 150])('adults from 0 to 300 with %i children', (children) => {
    expect(fallsAlong(upTo(300).map((n) => [n, children] as const), demo(name))).toEqual([]);
  });
  test.each([0, 68, 300])('children from 0 to 150 with %i adults', (adults) => {
    expect(fallsAlong(upTo(150).map((n) => [adults, n] as const), demo(name))).toEqual([]);
  });
});

const wave = (counts: Record<string, number>, turnout: unknown) => ({ counts, stay, turnout });
const event = (waves: readonly Record<string, unknown>[]) => menuEvent([recipeOf('rice', 'grain')], waves, { preferences: { cover: 0.9 } });
const portions = (waves: readonly Record<string, unknown>[]) => dish(menuOf(event(waves)), 'd-rice').portions.value;
const tea = (under1: number) => dish(menuOf(menuEvent([drinkOf('tea', true, true)], [wave({ adult: 40, under1 }, half)])), 'd-tea').portions.value;

describe('the reserve of a dish', () => {
  it('by hand: 100 adults in 50 pairs, half of them come: 50 and 1.28155 × sqrt(0.25 × 50 × 4) = 9.06 more, rounded up once', () => {
    expect(portions([wave({ adult: 100 }, half)])).toBe(60);
  });
  it('by hand: a guess of 40, 60 and 100: mean 63.33, spread 60 × sqrt(2.333 × 3.667 / 252) = 11.05, 1.28155 of it 14.17', () => {
    expect(portions([wave({ adult: 120 }, { kind: 'range', low: 40, likely: 60, high: 100 })])).toBe(78);
  });
  it('is nothing when everybody is sure to come, and pooled: two waves need less than twice one', () => {
    expect(portions([wave({ adult: 100 }, { kind: 'known' })])).toBe(100);
    expect(portions([wave({ adult: 100 }, half), wave({ adult: 100 }, half)])).toBe(113);
  });
  it('never goes beyond everybody: two adults, nine of ten likely', () => {
    expect(portions([wave({ adult: 2 }, { kind: 'share', share: 0.9 })])).toBe(2);
    expect(portions([wave({ adult: 50 }, { kind: 'range', low: 10, likely: 80, high: 90 })])).toBe(50);
  });
  it('a baby who eats nothing changes nothing', () => {
    expect([tea(0), tea(1), tea(9)]).toEqual([tea(0), tea(0), tea(0)]);
  });
});

describe('what families take together', () => {
  it('by hand: adults 1, 1, 1 and children 0.5, 0.5: families of 2 + 1 and of 1', () => expect(familySquares([1, 1, 1], [0.5, 0.5])).toBe(10));
  it('pairs those who take most, so that one more never lowers a family', () => {
    expect(familySquares([1, 0, 1, 0], [])).toBe(4);
    expect(familySquares([1, 0, 1, 0, 0.2], [])).toBeCloseTo(4.04, 12);
    expect(familySquares([], [])).toBe(0);
  });
});
