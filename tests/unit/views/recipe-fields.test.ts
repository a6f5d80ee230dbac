import { assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brewingSchema, fryingSchema, recipeSchema, roleIds, stepSchema } from '../../../shared/event';
import { brewingSpecs, fryingSpecs } from '../../../src-renderer/views/menu/recipes/number-spec';
import { roleMeans } from '../../../src-renderer/views/menu/recipes/role-means';
import { minutesIn, naturalSpan } from '../../../src-renderer/views/menu/recipes/span';
import { windowOfEarliest, windowOfLatest, withWindow } from '../../../src-renderer/views/menu/recipes/step-window';

const frying = { pieceBatterG: 25, fryMinutes: 4 };
const brewing = { method: 'infuse', hot: true, cupMl: 150 };

describe('the numbers of frying and brewing', () => {
  it.each(fryingSpecs.map((spec) => [spec.key, spec] as const))('frying: %s has the limits of the event file', (key, { min, max }) => {
    const takes = (value: number) => fryingSchema.safeParse({ ...frying, [key]: value }).success;
    expect([takes(min), takes(max), takes(min - 0.001), takes(max + 0.001)]).toEqual([true, true, false, false]);
  });
  it.each(brewingSpecs.map((spec) => [spec.key, spec] as const))('brewing: %s has the limits of the event file', (key, { min, max }) => {
    const takes = (value: number) => brewingSchema.safeParse({ ...brewing, [key]: value }).success;
    expect([takes(min), takes(max), takes(min - 0.001), takes(max + 0.001)]).toEqual([true, true, false, false]);
  });
  it('every field the event file has can be changed on the page', () => {
    const own = new Set<string>([...fryingSpecs.map((spec) => spec.key), 'bowlMinutes', 'crumbly', 'strongFlavour']);
    expect(Object.keys(fryingSchema.shape).filter((key) => !own.has(key))).toEqual([]);
    const brewed = new Set<string>([...brewingSpecs.map((spec) => spec.key), 'method', 'doseIngredient', 'sugar', 'serveAboveC', 'hot', 'caffeinated']);
    expect(Object.keys(brewingSchema.shape).filter((key) => !brewed.has(key))).toEqual([]);
  });
});

describe('a length of time', () => {
  it('is told in the largest unit that needs no long fraction', () => {
    expect([0, 30, 90, 120, 135, 1080, 1440, 2880, 129600, 121].map(naturalSpan)).toEqual(['min', 'min', 'min', 'h', 'h', 'h', 'h', 'day', 'day', 'min']);
  });
  it('comes back to the same minutes', () => {
    assert(property(integer({ min: 0, max: 525600 }), (minutes) => {
      const of = minutesIn[naturalSpan(minutes)];
      expect(Math.round(Number((minutes / of).toFixed(2)) * of)).toBe(minutes);
    }), { numRuns: 500 });
  });
});

describe('the window in which a step ends', () => {
  const step = stepSchema.parse({ id: 's', name: 'S', keeps: { place: 'cold', minutes: 600 } });
  it('starts from what the result keeps, and never turns round', () => {
    expect(windowOfLatest(step, 30)).toEqual({ earliest: 600, latest: 30 });
    expect(windowOfLatest(step, 900)).toEqual({ earliest: 900, latest: 900 });
    expect(windowOfEarliest(step, 120)).toEqual({ earliest: 120, latest: 0 });
    const set = withWindow(step, { earliest: 300, latest: 60 });
    expect(windowOfEarliest(set, 45)).toEqual({ earliest: 45, latest: 45 });
    expect(withWindow(set, undefined)).toEqual(step);
  });
  it('is one that the event file takes', () => {
    assert(property(integer({ min: 0, max: 43200 }), integer({ min: 0, max: 43200 }), (a, b) => {
      const one = withWindow(step, windowOfLatest(withWindow(step, windowOfEarliest(step, a)), b));
      expect(stepSchema.safeParse(one).success).toBe(true);
      expect(one.endsBefore?.earliest).toBeGreaterThanOrEqual(one.endsBefore?.latest ?? 0);
    }), { numRuns: 300 });
  });
});

const meansOf = (role: string, unit: string, more: object = {}) => roleMeans(recipeSchema.parse({ id: 'r', name: 'R', role, yield: { amount: { amount: '1', unit }, portions: 4 }, ingredients: [{ ingredient: 'onion', amount: { amount: '1', unit: 'g' } }], ...more }));

describe('what an adult is given', () => {
  it('is told in the unit the dish is made in', () => {
    expect(meansOf('friedSnack', 'piece')).toEqual({ n: 5, unit: 'piece' });
    expect(meansOf('grain', 'kg')).toEqual({ n: 150, unit: 'g' });
    expect(meansOf('soup', 'L')).toEqual({ n: 250, unit: 'ml' });
    expect(meansOf('hotDrink', 'L', { brewing })).toEqual({ n: 150, unit: 'ml' });
    expect(meansOf('sweet', 'bunch')).toEqual({ n: null, unit: 'piece' });
  });
  it('is known for every place in the meal', () => {
    for (const role of roleIds) expect([meansOf(role, 'kg').n ?? meansOf(role, 'L').n].filter((n) => n !== null && n > 0), role).toHaveLength(1);
  });
});
