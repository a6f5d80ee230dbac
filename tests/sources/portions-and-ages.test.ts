/**
 * Portions and age factors against published tables: US federal meal patterns for child and adult care (CACFP-CH, CACFP-AD), Dietary Guidelines
 * energy needs (DGA-A2, DGA2010), armed-forces cards (AFRS-E005), an extension service's table for crowds (UIUC).
 */
import { describe, expect, it } from 'vitest';
import { bandIds, roleIds } from '../../shared/event';
import { appetiteCurve, bandFactor, bandFactors, ingredient, rolePortion, rolePortions, sharedAppetite, sourceTitle } from '../../shared/reference';

// Minimum lunch: vegetable cup, grain ounce equivalents, pulses cup, milk fl oz.
const adultLunch = [0.5, 2, 0.5, 8];
const lunches: Readonly<Record<string, readonly number[]>> = { '1-2': [0.125, 0.5, 0.25, 4], '3-5': [0.25, 0.5, 0.375, 6], '6-12': [0.5, 1, 0.5, 8], '13-18': [0.5, 1, 0.5, 8] };
const ratioOf = (age: string): number => {
  const lunch = lunches[age] ?? [];
  return lunch.reduce((sum, v, i) => sum + v / (adultLunch[i] ?? 1), 0) / lunch.length;
};
// kcal a day, mean of both sexes: moderate and sedentary.
const energy: Readonly<Record<string, readonly [number, number]>> = { '2-3': [1150, 1000], '2-5': [1275, 1100], '6-12': [1743, 1486], '13-17': [2280, 1980], adult: [2250, 2050], older: [2050, 1800] };
const energyRatios = (age: string): readonly number[] => [(energy[age]?.[0] ?? 0) / 2250, (energy[age]?.[1] ?? 0) / 2050];

describe('age factors', () => {
  it('the meal pattern gives the mean ratios 0.38, 0.56, 0.88, 0.88', () => {
    expect(['1-2', '3-5', '6-12', '13-18'].map((a) => Math.round(ratioOf(a) * 100) / 100)).toEqual([0.38, 0.56, 0.88, 0.88]);
  });

  it.each([['age1to3', '1-2', '2-3'], ['age4to6', '3-5', '6-12'], ['age7to9', '6-12', '6-12'], ['age10to12', '6-12', '6-12'], ['age13to17', '13-18', '13-17'], ['olderAdult', '', 'older']])(
    '%s lies within what meal pattern and energy need say', (band, lunch, need) => {
      const all = [...(lunch === '' ? [] : [ratioOf(lunch)]), ...energyRatios(need), ...(band === 'age4to6' ? energyRatios('2-5') : [])];
      const { food, low, high } = bandFactor(band);
      expect(food).toBeGreaterThanOrEqual(Math.min(...all) - 0.015);
      expect(food).toBeLessThanOrEqual(Math.max(...all) + 0.015);
      expect([low <= food, food <= high]).toEqual([true, true]);
    });

  it('rise with age to the adult, who is 1; babies are not counted', () => {
    expect(bandFactors.map((b) => b.band)).toEqual([...bandIds]);
    const young = bandFactors.slice(0, 7).map((b) => b.food);
    expect(young).toEqual(young.toSorted((a, b) => a - b));
    expect([bandFactor('under1').food, bandFactor('adult').food]).toEqual([0, 1]);
  });

  it('give nobody under 13 tea or coffee', () => {
    for (const band of ['under1', 'age1to3', 'age4to6', 'age7to9', 'age10to12']) expect(bandFactor(band).hotCaffeinated).toBe(0);
    expect(() => bandFactor('giant')).toThrow(RangeError);
  });
});

describe('portions by role', () => {
  it('exist for every role, inside their range, from a source that is known', () => {
    expect(rolePortions.map((r) => r.role).toSorted()).toEqual([...roleIds].toSorted());
    for (const r of rolePortions) {
      const values = [r.piece, r.g, r.ml].filter((v) => v !== null);
      expect(values.length).toBeGreaterThan(0);
      for (const v of values) {
        expect([v.low <= v.value, v.value <= v.high]).toEqual([true, true]);
        expect(sourceTitle(v.source)).toBeDefined();
      }
    }
    expect(() => rolePortion('starter')).toThrow(RangeError);
  });

  it('rice: nine pounds serve a hundred portions of three quarters of a cup (AFRS-E005), within 5 % by our yield', () => {
    const cookedG = (9 * 453.59237 * (ingredient('long-grain-rice')?.cookedFactor ?? 0)) / 100;
    expect(Math.abs(cookedG / (0.75 * 158) - 1)).toBeLessThanOrEqual(0.05);
  });

  it('rice: the portion lies between half a cup (USDA-CR) and a cup (CACFP-AD) at 158 g a cup', () => {
    const grams = rolePortion('grain').g?.value ?? 0;
    expect(grams).toBeGreaterThanOrEqual(79);
    expect(grams).toBeLessThanOrEqual(158);
  });

  it('cold drinks come in the six-ounce cups of the table for crowds (UIUC): 3 cups, 532 ml a head', () => {
    expect((rolePortion('coldDrink').ml?.value ?? 0) * 3).toBeCloseTo(532, -1);
  });

  it('condiment: three tablespoons of dip (UIUC) are the upper end', () => {
    expect(rolePortion('condiment').ml?.high).toBeGreaterThanOrEqual(44);
  });
});

describe('shared appetite (common practice, no source)', () => {
  it('each further dish makes each smaller and all together larger', () => {
    appetiteCurve.slice(1).forEach((p, i) => {
      const before = appetiteCurve[i];
      expect(p.each).toBeLessThan(before?.each ?? 0);
      expect(p.each * p.dishes).toBeGreaterThan((before?.each ?? 0) * (before?.dishes ?? 0));
    });
  });
  it('stays at its last total beyond the table', () => {
    expect(sharedAppetite(12) * 12).toBeCloseTo(0.33 * 6, 12);
    expect(sharedAppetite(1)).toBe(1);
    expect(sharedAppetite(0)).toBe(1);
  });
});
